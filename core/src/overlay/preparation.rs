//! What the old surface must be like under an overlay, and how its hold is tested.

use crate::basis::BasisId;
use crate::failure::{Result, check};
use crate::note::NoteCode;
use crate::operation::scalar::Word;
use crate::quantity::units::INCH;
use crate::quantity::{Force, Length, Pressure, Range, Typed};
use std::f64::consts::PI;

/// A pull: more than none, up to 100 kN.
pub const PULL: Range = Range::positive_to(1.0e5);
/// The diameter of a core: 1 to 6 in.
pub const CORE: Range = Range::closed(INCH, 6.0 * INCH);
/// A strength asked for: more than none, up to 10 MPa.
pub const ASKED: Range = Range::positive_to(1.0e7);

crate::choice! {
    /// What goes on the old surface.
    pub enum Covering {
        /// A sealer.
        Sealer = "sealer",
        /// A thin film.
        ThinFilm = "thin film",
        /// A high-build coating.
        HighBuild = "high-build coating",
        /// A self-levelling topping.
        SelfLevelling = "self-levelling",
        /// A polymer overlay.
        Polymer = "polymer overlay",
        /// A concrete overlay or repair.
        Overlay = "concrete overlay",
        /// A bonded concrete topping in a building.
        Topping = "bonded topping",
    }
}

/// The surface profile that a covering needs, 1 (smooth) to 10 (rough) after ICRI 310.2R.
#[derive(Clone, Copy, Debug)]
pub struct Profile {
    /// The smoothest.
    pub least: i64,
    /// The roughest.
    pub greatest: i64,
    /// Where it comes from.
    pub basis: BasisId,
}

impl Covering {
    /// The profile it needs.
    #[must_use]
    pub const fn profile(self) -> Profile {
        let (least, greatest, basis) = match self {
            Self::Sealer => (1, 2, BasisId::SurfaceProfileRecalled),
            Self::ThinFilm => (1, 3, BasisId::SurfaceProfileRecalled),
            Self::HighBuild => (3, 5, BasisId::SurfaceProfileRecalled),
            Self::SelfLevelling => (4, 6, BasisId::SurfaceProfile),
            Self::Polymer => (5, 9, BasisId::SurfaceProfileRecalled),
            Self::Overlay => (5, 10, BasisId::SurfaceProfileRecalled),
            Self::Topping => (7, 9, BasisId::SurfaceProfile),
        };
        Profile { least, greatest, basis }
    }
}

/// A way to a profile.
#[derive(Clone, Copy, Debug)]
pub struct Way {
    /// The profile it makes.
    pub profile: i64,
    /// What is done.
    pub way: &'static str,
    /// Whether it makes dust of silica.
    pub dust: bool,
}

/// Every way, by rising profile.
pub static WAYS: [Way; 10] = [
    Way { profile: 1, way: "acid etching; no longer wanted under bonded overlays", dust: false },
    Way { profile: 2, way: "grinding", dust: true },
    Way { profile: 3, way: "light shotblast", dust: true },
    Way { profile: 4, way: "light scarification", dust: true },
    Way { profile: 5, way: "medium shotblast", dust: true },
    Way { profile: 6, way: "medium scarification", dust: true },
    Way { profile: 7, way: "heavy abrasive blast", dust: true },
    Way { profile: 8, way: "scabbling", dust: true },
    Way { profile: 9, way: "heavy scarification, rotomilling; then blast off what it bruised", dust: true },
    Way { profile: 10, way: "handheld breaker, then blast", dust: true },
];

/// The ways to the profiles that a covering needs.
pub fn ways(profile: Profile) -> impl Iterator<Item = &'static Way> {
    WAYS.iter().filter(move |way| (profile.least..=profile.greatest).contains(&way.profile))
}

crate::choice! {
    /// Where a pulled core broke.
    pub enum Broke {
        /// In the old concrete.
        Old = "old concrete",
        /// Where old and new meet.
        Between = "between",
        /// In the overlay.
        Overlay = "overlay",
        /// In the glue of the disc.
        Glue = "glue",
    }
}

crate::choice! {
    /// What a pull-off test says.
    pub enum PullOff {
        /// At least what is asked.
        Enough = "enough",
        /// Less than is asked.
        TooLittle = "too little",
        /// The glue failed first: the test says nothing.
        Void = "void",
    }
}

/// A pull-off test.
#[derive(Clone, Copy, Debug)]
pub struct Pulled {
    /// Load over the area of the core.
    pub strength: Pressure,
    /// What it says.
    pub verdict: PullOff,
    /// What to know of it.
    pub note: Option<NoteCode>,
}

/// The pull-off strength `f = 4 P / (pi d^2)`, held against what the project's specification asks. A glue that fails at less leaves the test void; what it held
/// counts where that is enough.
///
/// # Errors
/// A value outside its range.
pub fn pull_off(load: Force, diameter: Length, broke: Word<Broke>, asked: Pressure) -> Result<Pulled> {
    let load = check("load", load, PULL)?.base();
    let diameter = check("diameter", diameter, CORE)?.base();
    let asked = check("asked", asked, ASKED)?.base();
    let strength = 4.0 * load / (PI * diameter * diameter);
    let (verdict, note) = match (strength >= asked, broke.0) {
        (true, _) => (PullOff::Enough, None),
        (false, Broke::Glue) => (PullOff::Void, Some(NoteCode::VoidTest)),
        (false, _) => (PullOff::TooLittle, None),
    };
    Ok(Pulled { strength: Pressure::from_base(strength), verdict, note })
}
