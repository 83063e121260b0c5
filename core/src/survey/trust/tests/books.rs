//! Invented level books: floors of all the words of the site, with slopes, settled corners, hollows and noise.

use crate::geometry::Point;
use crate::quantity::Typed;
use crate::quantity::units::{FOOT, INCH};
use crate::survey::Survey;
use crate::survey::fixed::metres;
use crate::survey::old_slab::{Grid, Instrument, Marks, Settings, Shots, Texture};
use crate::survey::outline::{Corner, Outline};
use crate::survey::surface::Shot;
use crate::survey::varied::Varied;

/// An invented floor with its heights as booked, in metres.
#[derive(Clone)]
pub(super) struct Book {
    pub(super) size: [f64; 2],
    pub(super) xs: Vec<f64>,
    pub(super) ys: Vec<f64>,
    /// Columns of a grid; none for scattered shots.
    pub(super) columns: Option<usize>,
    pub(super) heights: Vec<f64>,
    pub(super) instrument: Instrument,
    pub(super) texture: Texture,
}

const INSTRUMENTS: [Instrument; 4] = [
    Instrument::Laser,
    Instrument::OpticalEighths,
    Instrument::OpticalHundredths,
    Instrument::OpticalMillimetres,
];
const TEXTURES: [Texture; 3] = [Texture::Trowelled, Texture::Broomed, Texture::Rough];

impl Book {
    /// A book of 12 to 60 shots.
    pub(super) fn invented(varied: &mut Varied) -> Self {
        let mut book = Self::places(varied);
        book.instrument = INSTRUMENTS[varied.count(0, 4)];
        book.texture = TEXTURES[varied.count(0, 3)];
        let (slope, turn) = (varied.between(0.0, 0.25 / 12.0), varied.between(0.0, 6.3));
        let corner = Dip::corner(&book, varied);
        let hollow = Dip::hollow(&book, varied);
        let line = book.line();
        for place in 0..book.xs.len() {
            let (x, y) = (book.xs[place], book.ys[place]);
            let even = slope * (turn.cos() * x + turn.sin() * y);
            let texture = book.texture.deviation().base() * normal(varied);
            let reading = book.instrument.reading_deviation().base() * normal(varied);
            let height = even - corner.depth_at(x, y) - hollow.depth_at(x, y) + texture + reading;
            book.heights.push((height / line).round() * line);
        }
        book
    }

    fn places(varied: &mut Varied) -> Self {
        let mut book = Self {
            size: [0.0; 2],
            xs: Vec::new(),
            ys: Vec::new(),
            columns: None,
            heights: Vec::new(),
            instrument: Instrument::Laser,
            texture: Texture::Broomed,
        };
        let grid = varied.between(0.0, 1.0) < 0.6;
        let (columns, rows) = loop {
            let (columns, rows) = (varied.count(3, 8), varied.count(4, 10));
            if (12..=60).contains(&(columns * rows)) {
                break (columns, rows);
            }
        };
        let spacing = [varied.between(4.0, 8.5) * FOOT, varied.between(4.0, 8.5) * FOOT];
        let wall = varied.between(0.5, 1.2) * FOOT;
        // Scattered shots lie anywhere in the middle six tenths of their cell.
        let mut shift = |spacing: f64| if grid { 0.0 } else { varied.between(-0.3, 0.3) * spacing };
        for row in 0..rows {
            for column in 0..columns {
                book.xs.push(
                    wall + spacing[0] * (column as f64 + if grid { 0.0 } else { 0.3 }) + shift(spacing[0]),
                );
                book.ys.push(
                    wall + spacing[1] * (row as f64 + if grid { 0.0 } else { 0.3 }) + shift(spacing[1]),
                );
            }
        }
        let over = if grid { 0.0 } else { 0.6 };
        book.columns = grid.then_some(columns);
        book.size = [
            2.0 * wall + spacing[0] * ((columns - 1) as f64 + over),
            2.0 * wall + spacing[1] * ((rows - 1) as f64 + over),
        ];
        book
    }

    /// The finest line read on the rod, in metres.
    pub(super) fn line(&self) -> f64 {
        match self.instrument {
            Instrument::OpticalHundredths => FOOT / 100.0,
            Instrument::OpticalMillimetres => 0.001,
            _ => INCH / 8.0,
        }
    }

    pub(super) fn survey(&self) -> Survey {
        let corner = |x: f64, y: f64| Corner::new(metres(x), metres(y));
        let [width, depth] = self.size;
        let corners = [corner(0.0, 0.0), corner(width, 0.0), corner(width, depth), corner(0.0, depth)];
        let outline = Outline::from_corners(&corners, &[]).unwrap();
        let settings =
            Settings { instrument: Some(self.instrument), texture: Some(self.texture), beyond_allowed: true };
        Survey::new(outline, self.shots(), settings).unwrap()
    }

    fn shots(&self) -> Shots {
        match self.columns {
            Some(columns) => Shots::Grid(Grid {
                columns: self.xs[..columns].to_vec(),
                rows: self.ys.iter().copied().step_by(columns).collect(),
                heights: self.heights.iter().map(|height| Some(*height)).collect(),
                steps: false,
            }),
            None => {
                let each = self.xs.iter().zip(&self.ys).zip(&self.heights);
                let shot = |((&x, &y), &z): ((&f64, &f64), &f64)| Shot {
                    x,
                    y,
                    z,
                    outside_allowed: false,
                    step: false,
                };
                Shots::Scattered(Marks { shots: each.map(shot).collect(), names: Vec::new() })
            }
        }
    }
}

/// Ground that has gone down.
struct Dip {
    at: [f64; 2],
    depth: f64,
    reach: f64,
    round: bool,
}

impl Dip {
    /// A settled corner, on every other floor: 1/2 to 1 1/4 in, over 8 to 16 ft.
    fn corner(book: &Book, varied: &mut Varied) -> Self {
        let there = varied.count(0, 2) as f64;
        let at = [book.size[0] * varied.count(0, 2) as f64, book.size[1] * varied.count(0, 2) as f64];
        let depth = there * varied.between(0.5, 1.25) * INCH;
        Self { at, depth, reach: varied.between(8.0, 16.0) * FOOT, round: false }
    }

    /// A hollow, on every other floor: up to 3/4 in deep.
    fn hollow(book: &Book, varied: &mut Varied) -> Self {
        let there = varied.count(0, 2) as f64;
        let at = [varied.between(0.0, book.size[0]), varied.between(0.0, book.size[1])];
        let depth = there * varied.between(0.3, 0.75) * INCH;
        Self { at, depth, reach: varied.between(3.0, 7.0) * FOOT, round: true }
    }

    fn depth_at(&self, x: f64, y: f64) -> f64 {
        let far = Point::new(x, y).distance(Point::new(self.at[0], self.at[1])) / self.reach;
        self.depth * if self.round { (-0.5 * far * far).exp() } else { (1.0 - far).max(0.0) }
    }
}

/// A normal variable: the sum of twelve even ones.
fn normal(varied: &mut Varied) -> f64 {
    (0..12).map(|_| varied.between(0.0, 1.0)).sum::<f64>() - 6.0
}
