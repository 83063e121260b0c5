//! LandXML, written by hand after the element and attribute names of the published schema 1.2 (LandXML.org, 2008).

use super::damage::{changed, cut_with_counts};
use super::*;
use crate::failure::Place;
use crate::note::NoteCode;
use crate::survey::read::{Reason, SurfaceReading, read_surface};

const FILE: &str = r#"<?xml version="1.0" encoding="UTF-8"?>
<!-- an invented yard -->
<LandXML xmlns="http://www.landxml.org/schema/LandXML-1.2" version="1.2" date="2026-01-05" time="08:00:00">
 <Units><Imperial areaUnit="squareFoot" linearUnit="foot" volumeUnit="cubicYard" temperatureUnit="fahrenheit" pressureUnit="inHG"/></Units>
 <CgPoints>
  <CgPoint name="A &amp; B" oID="1">10.5 20.25 100</CgPoint>
  <CgPoint name="C"><![CDATA[ 11 21 101 ]]></CgPoint>
  <CgPoint name="flat">12 22</CgPoint>
  <CgPoint pntRef="C"/>
 </CgPoints>
 <Surfaces>
  <Surface name="old slab" desc="as shot">
   <SourceData><Breaklines><Breakline brkType="standard"><PntList3D>1 2 3 4 5 6</PntList3D></Breakline></Breaklines></SourceData>
   <Definition surfType="TIN">
    <Pnts><P id="7">0 0 1</P><P id="3">0 10 2</P><P id="4">
      10 10 3</P><P id="9">10 0 4</P></Pnts>
    <Faces><F>7 3 4</F><F n="1 2 3">7 4 9</F><F i="1">3 4 9</F></Faces>
   </Definition>
  </Surface>
 </Surfaces>
</LandXML>
"#;

fn surface(text: impl AsRef<[u8]>, name: Option<&str>) -> SurfaceReading {
    read_surface(text.as_ref(), &plain(), name).unwrap_or_else(|failure| panic!("{failure}"))
}

#[test]
fn points_of_the_survey_northing_first() {
    let reading = points(FILE, &plain());
    assert_eq!((reading.format, reading.unit), (Format::LandXml, Some(FileUnit::Foot)));
    assert_eq!(reading.points.x, [20.25 * 0.3048, 21.0 * 0.3048]);
    assert_eq!(reading.points.y, [10.5 * 0.3048, 11.0 * 0.3048]);
    assert_eq!(reading.points.z, [100.0 * 0.3048, 101.0 * 0.3048]);
    assert_eq!(reading.points.names, [Some("A & B".to_owned()), Some("C".to_owned())]);
    assert_eq!((reading.left_out[0].reason, reading.left_out[0].count), (Reason::NoHeight, 1));
}

#[test]
fn the_surface_with_its_own_faces() {
    for name in [None, Some("old slab")] {
        let reading = surface(FILE, name);
        assert_eq!(reading.tin.name.as_deref(), Some("old slab"));
        assert_eq!(reading.tin.points.x, [0.0, 10.0, 10.0, 0.0].map(|c| c * 0.3048));
        assert_eq!(reading.tin.points.y, [0.0, 0.0, 10.0, 10.0].map(|c| c * 0.3048));
        assert_eq!(reading.tin.points.z, [1.0, 2.0, 3.0, 4.0].map(|c| c * 0.3048));
        assert_eq!(reading.tin.faces, [[0, 1, 2], [0, 2, 3]]);
        let notes: Vec<&str> = reading.notes.iter().map(|note| &note.text[..12]).collect();
        assert_eq!(notes, ["1 faces mark", "1 breaklines"]);
    }
}

#[test]
fn namespaces_and_versions() {
    let prefixed =
        FILE.replace('<', "<l:").replace("<l:/", "</l:").replace("<l:?", "<?").replace("<l:!", "<!");
    let prefixed = prefixed.replace("xmlns=", "xmlns:l=");
    assert_eq!(surface(&prefixed, None), surface(FILE, None));
    let older =
        FILE.replace("LandXML-1.2", "LandXML-1.0").replace("\"1.2\"", "\"1.0\"").replace('\n', "\r\n");
    assert_eq!(surface(format!("\u{feff}{older}"), None), surface(FILE, None));
}

#[test]
fn units() {
    let with = |units: &str| {
        let start = FILE.find("<Imperial").unwrap();
        let end = start + FILE[start..].find("/>").unwrap() + 2;
        format!("{}{units}{}", &FILE[..start], &FILE[end..])
    };
    for (units, unit) in [
        (r#"<Metric linearUnit="meter"/>"#, FileUnit::Metre),
        (r#"<Metric linearUnit="millimeter" elevationUnit="millimeter"/>"#, FileUnit::Millimetre),
        (r#"<Imperial linearUnit="USSurveyFoot" elevationUnit="feet"></Imperial>"#, FileUnit::SurveyFoot),
        (r#"<Imperial linearUnit="inch"/>"#, FileUnit::Inch),
        (r#"<Imperial linearUnit='yard'/>"#, FileUnit::Yard),
    ] {
        let reading = points(with(units), &plain());
        assert_eq!((reading.unit, reading.points.y[0]), (Some(unit), unit.metres(10.5)), "{units}");
    }
    for (units, expected) in [
        (r#"<Metric linearUnit="foot"/>"#, Code::Contradiction),
        (r#"<Imperial linearUnit="meter"/>"#, Code::Contradiction),
        (r#"<Metric linearUnit="meter" elevationUnit="feet"/>"#, Code::Contradiction),
        (r#"<Metric linearUnit="meter"/><Imperial linearUnit="foot"/>"#, Code::Contradiction),
        (r#"<Imperial linearUnit="mile"/>"#, Code::UnitUnknown),
        (r#"<Imperial linearUnit="psi"/>"#, Code::UnitWrong),
        (r#"<Imperial/>"#, Code::UnitMissing),
        ("", Code::UnitMissing),
    ] {
        let failure = refusal(with(units), &plain());
        assert_eq!(failure.code, expected, "{units}: {failure}");
        let overruled = points(with(units), &unit(FileUnit::Foot).overruling());
        assert_eq!(overruled.unit, Some(FileUnit::Foot));
    }
    assert_eq!(code(FILE, &unit(FileUnit::SurveyFoot)), Code::Contradiction);
}

#[test]
fn several_surfaces_are_asked_for_by_name() {
    let at = FILE.find("  <Surface ").unwrap();
    let end = FILE.find(" </Surfaces>").unwrap();
    let second = FILE[at..end].replace("old slab", "lawn").replace("0 10 2", "0 12 2");
    let two = format!("{}{second}{}", &FILE[..end], &FILE[end..]);
    assert_eq!(surface(&two, Some("lawn")).tin.points.x[1], 12.0 * 0.3048);
    let failed = |text: &str, name| read_surface(text.as_bytes(), &plain(), name).unwrap_err();
    assert_eq!(failed(&two, None).code, Code::SurfaceUnclear);
    assert!(failed(&two, None).allowed.contains("lawn"));
    assert!(failed(&two, Some("lwan")).remedy.contains("lawn"));
    let bare = format!("{}{}", &FILE[..FILE.find(" <Surfaces>").unwrap()], "</LandXML>");
    assert_eq!(failed(&bare, None).code, Code::SurfaceUnclear);
    let without = |text: &str| {
        let (from, to) = (text.find(" <CgPoints>").unwrap(), text.find(" <Surfaces>").unwrap());
        format!("{}{}", &text[..from], &text[to..])
    };
    assert_eq!(points(without(FILE), &plain()).points.z, surface(FILE, None).tin.points.z);
    assert_eq!(code(without(&two), &plain()), Code::SurfaceUnclear);
    let named = read_surface(b"ply\n", &plain(), Some("x"));
    assert_eq!(named.unwrap_err().code, Code::SurfaceUnclear);
}

#[test]
fn what_breaks_the_rules_is_refused_with_its_line() {
    for (from, to, expected, line) in [
        ("10.5 20.25 100", "10.5 20.25 nan", Code::NotFinite, 6),
        ("10.5 20.25 100", "10,5 20.25 100", Code::DecimalComma, 6),
        ("10.5 20.25 100", "10.5 x 100", Code::NotReadable, 6),
        ("10.5 20.25 100", "10.5", Code::FileBroken, 6),
        ("10.5 20.25 100", "1 2 3 4", Code::FileBroken, 6),
        ("10.5 20.25 100", "1 2 &#51;", Code::FileBroken, 6),
        ("10.5 20.25 100", "1 2 <b/> 3e400", Code::NotFinite, 6),
        ("P id=\"3\"", "P id=\"7\"", Code::FileBroken, 15),
        ("P id=\"3\"", "P", Code::FileBroken, 15),
        ("0 10 2", "0 10", Code::FileBroken, 15),
        ("7 3 4", "7 3 5", Code::FileBroken, 17),
        ("7 3 4", "7 3", Code::FileBroken, 17),
        ("7 3 4", "7 3 -4", Code::FileBroken, 17),
        ("</Faces>", "</Face>", Code::FileBroken, 17),
        ("</LandXML>", "", Code::FileShort, 22),
        ("</LandXML>\n", "</LandXML><LandXML/>", Code::FormatUnknown, 21),
    ] {
        assert!(FILE.contains(from));
        let failure = refusal(FILE.replacen(from, to, 1), &plain());
        assert_eq!(failure.code, expected, "{to}: {failure}");
        assert!(matches!(failure.place, Place::Line(found) if found.abs_diff(line) <= 1), "{to}: {failure}");
    }
    assert_eq!(code("<html><body/></html>", &plain()), Code::FormatUnknown);
    assert_eq!(code("<?xml version='1.0'?>", &plain()), Code::FileShort);
    let mut latin = FILE.as_bytes().to_vec();
    let at = FILE.find("as shot").unwrap();
    latin[at] = 0xe9;
    let failure = refusal(&latin, &plain());
    assert_eq!((failure.code, failure.place), (Code::FileBroken, Place::Line(12)));
    let deep = format!("{}{}", FILE.trim_end().trim_end_matches("</LandXML>"), "<a>".repeat(200_000));
    assert_eq!(code(&deep, &plain()), Code::FileShort);
    let bomb = FILE
        .replace("<!-- an invented yard -->", "<!DOCTYPE l [<!ENTITY a \"1\"><!ENTITY b \"&a;&a;\">]>")
        .replace("10.5 20.25 100", "1 2 &b;");
    assert_eq!(code(&bomb, &plain()), Code::FileBroken);
}

#[test]
fn cut_and_changed() {
    cut_with_counts(FILE.as_bytes(), &plain());
    changed(FILE.as_bytes(), &plain(), 11, 5000);
    let notes = points(FILE, &plain()).notes;
    assert!(notes.iter().any(|note| note.code == NoteCode::FileParts), "{notes:?}");
}
