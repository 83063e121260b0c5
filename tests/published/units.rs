//! Units against the published factors.

use super::read;
use overslab::quantity::kinds;
use overslab::quantity::read_kind;
use overslab::quantity::unit::QuantityType;
use serde_json::Value as Json;

fn text<'a>(row: &'a Json, key: &str) -> &'a str {
    row[key].as_str().unwrap_or_else(|| panic!("{row} has no {key}"))
}

/// What a text reads as, in another unit of the quantity.
fn read_as(quantity: &'static QuantityType, row: &Json) -> f64 {
    let reading = read_kind(text(row, "text"), quantity, None).unwrap_or_else(|failure| panic!("{failure}"));
    let unit = quantity.unit(text(row, "in")).unwrap_or_else(|| panic!("{row}: no such unit"));
    (unit.from_base)(reading.base)
}

#[test]
fn factors_are_those_of_the_definitions_and_of_the_table() {
    let file = read("units");
    let exact_within = file["rel_exact"].as_f64().unwrap();
    for row in file["unit"].as_array().unwrap() {
        let name = text(row, "quantity");
        let quantity = kinds::ALL.iter().copied().find(|quantity| quantity.name == name).unwrap();
        let found = read_as(quantity, row);
        let exact: f64 = text(row, "exact").parse().unwrap();
        assert!(
            (found - exact).abs() <= exact_within * exact,
            "units.toml: {row}: {found:?}, exactly {exact:?}"
        );
        let Some(table) = row["table"].as_str() else { continue };
        let printed: f64 = table.parse().unwrap();
        // Half of the seventh digit of what is printed.
        let half = if row["bold"] == true {
            exact_within * exact
        } else {
            0.5e-6 * 10.0_f64.powf(printed.log10().floor())
        };
        assert!((found - printed).abs() <= half, "units.toml: {row}: {found:?}, printed {table}");
    }
}

#[test]
fn temperatures_meet_where_the_scales_say() {
    let file = read("units");
    for row in file["temperature"].as_array().unwrap() {
        let found = read_as(&kinds::temperature, row);
        let exact: f64 = text(row, "exact").parse().unwrap();
        // Between scales with an offset of 459.67 the last digit of a double at 500 K is 6e-14 K.
        assert!((found - exact).abs() <= 1.2e-13, "units.toml: {row}: {found:?}, exactly {exact:?}");
    }
}

#[test]
fn every_customary_unit_of_the_library_is_checked() {
    let file = read("units");
    let checked: Vec<(&str, &str)> = file["unit"]
        .as_array()
        .unwrap()
        .iter()
        .map(|row| (text(row, "quantity"), text(row, "text").trim_start_matches("1 ")))
        .collect();
    // Those that need no table: powers of ten of the base unit, and pure ratios.
    let plain = [
        "m", "cm", "mm", "m2", "m3", "kg", "N", "kN", "Pa", "kPa", "MPa", "kg/m3", "s", "m/s", "m3/s", "K",
        "degC", "money", "/m3", "/m2", "/kg", "/t", "Pa/m", "kPa/m", "MPa/m", "N/m", "kN/m", "/K", "/degC",
        "kg/m2/s",
    ];
    let ratios = ["ratio", "share", "relative humidity", "humidity", "air content", "water-cement ratio"];
    for quantity in kinds::ALL {
        for unit in quantity.units {
            let known = plain.contains(&unit.symbol)
                || ratios.contains(&quantity.name)
                || unit.symbol == "degF"
                || quantity.name == "slope" && matches!(unit.symbol, "ft/ft" | "%")
                || checked.contains(&(quantity.name, unit.symbol));
            assert!(known, "units.toml does not check the {} {}", quantity.name, unit.symbol);
        }
    }
}
