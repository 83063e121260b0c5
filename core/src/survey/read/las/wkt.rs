//! Units in a coordinate system written as well-known text (OGC 01-009 and OGC 18-010): of the plan and of the heights.

/// Metres in a unit, as stated.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Units {
    pub(super) plan: Option<f64>,
    pub(super) height: Option<f64>,
    /// There is a geographic system.
    pub(super) geographic: bool,
}

/// Systems whose own unit is that of the plan.
const PLAN: [&str; 6] = ["PROJCS", "PROJCRS", "PROJECTEDCRS", "LOCAL_CS", "ENGCRS", "ENGINEERINGCRS"];
/// Systems whose unit is that of the heights.
const HEIGHT: [&str; 3] = ["VERT_CS", "VERTCRS", "VERTICALCRS"];
const GEOGRAPHIC: [&str; 4] = ["GEOGCS", "GEOGCRS", "GEODCRS", "GEOGRAPHICCRS"];
/// What a system may stand in, or its unit.
const AROUND: [&str; 4] = ["COMPD_CS", "COMPOUNDCRS", "BOUNDCRS", "SOURCECRS"];

/// Finds the units by where they stand.
pub(super) fn units(text: &str) -> Units {
    let mut units = Units::default();
    let mut open: Vec<String> = Vec::new();
    let mut word = String::new();
    let mut quoted = false;
    for (at, c) in text.char_indices() {
        match c {
            '"' => quoted = !quoted,
            _ if quoted => {}
            '[' | '(' => {
                open.push(std::mem::take(&mut word).to_ascii_uppercase());
                units.enter(&open, text.get(at + 1..).unwrap_or_default());
            }
            ']' | ')' => {
                open.pop();
                word.clear();
            }
            c if c.is_ascii_alphanumeric() || c == '_' => word.push(c),
            _ => word.clear(),
        }
    }
    units
}

impl Units {
    /// A bracket was opened; `open` names all that are open, `inside` is the text behind it.
    fn enter(&mut self, open: &[String], inside: &str) {
        let Some((last, around)) = open.split_last() else { return };
        let is_in = |names: &[&str]| names.contains(&last.as_str());
        self.geographic |= is_in(&GEOGRAPHIC);
        if !is_in(&["UNIT", "LENGTHUNIT"]) {
            return;
        }
        // The unit of the system itself or of one of its axes, not of a parameter or of the system it is based on.
        let around =
            around.iter().map(String::as_str).filter(|name| !AROUND.contains(name) && *name != "AXIS");
        let owner: Vec<&str> = around.collect();
        let factor = behind_name(inside).and_then(first_number);
        match owner[..] {
            [system] if PLAN.contains(&system) => self.plan = self.plan.or(factor),
            [system] if HEIGHT.contains(&system) => self.height = self.height.or(factor),
            _ => {}
        }
    }
}

/// What stands behind the quoted name and its comma.
fn behind_name(text: &str) -> Option<&str> {
    let (_, behind) = text.trim_start().strip_prefix('"')?.split_once('"')?;
    behind.trim_start().strip_prefix(',')
}

/// `0.3048,ID[...` and `0.3048]` give 0.3048.
fn first_number(text: &str) -> Option<f64> {
    let end = text.find([',', ']', ')']).unwrap_or(text.len());
    text.get(..end)?.trim().parse().ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_unit_of_the_system_not_of_what_stands_in_it() {
        // Written after the grammar of OGC 01-009; an invented system.
        let older = r#"COMPD_CS["shed",PROJCS["grid (ft)",GEOGCS["g",DATUM["d",SPHEROID["s",6378137,298.25]],PRIMEM["p",0],
            UNIT["degree",0.0174532925199433]],PROJECTION["Transverse_Mercator"],PARAMETER["false_easting",500000],
            UNIT["US survey foot",0.3048006096012192,AUTHORITY["EPSG","9003"]],AXIS["X",EAST]],
            VERT_CS["h",VERT_DATUM["v",2005],UNIT["metre",1.0]]]"#;
        assert_eq!(
            units(older),
            Units { plan: Some(0.3048006096012192), height: Some(1.0), geographic: true }
        );
        // After OGC 18-010.
        let newer = r#"PROJCRS["grid",BASEGEOGCRS["g",DATUM["d",ELLIPSOID["s",6378137,298.25,LENGTHUNIT["metre",1]]]],
            CONVERSION["c",METHOD["m"],PARAMETER["e",1640416.67,LENGTHUNIT["foot",0.3048]]],CS[Cartesian,2],
            AXIS["x",east,LENGTHUNIT["foot",0.3048]],AXIS["y",north,LENGTHUNIT["foot",0.3048]]]"#;
        assert_eq!(units(newer).plan, Some(0.3048));
        let degrees = r#"GEOGCS["g",DATUM["d"],UNIT["degree",0.0174532925199433]]"#;
        assert_eq!(units(degrees), Units { plan: None, height: None, geographic: true });
        for odd in
            ["", "]]]", "PROJCS[", "UNIT[\"m\",1]", "PROJCS[\"é\",UNIT[\"m\",x]]", "PROJCS[\"a\"\"b\",UNIT[é"]
        {
            assert_eq!(units(odd).plan, None, "{odd}");
        }
    }
}
