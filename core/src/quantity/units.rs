//! Every quantity and every unit, with exact factors.
//!
//! Factors follow NIST SP 811 (2008), appendix B, from the exact definitions: 1 ft = 0.3048 m, 1 lb = 0.453 592 37 kg,
//! standard gravity 9.806 65 m/s2, 1 gal (US) = 231 in3, t/F = 9/5 t/C + 32. Base units: metre, kilogram, second, kelvin.

/// Kinds keep quantities of one dimension apart.
pub mod kind {
    use uom::marker::{Div, Mul};

    /// A place on a scale (an elevation, a temperature): two cannot be added.
    pub trait Level: Mul + Div {}
    /// The fall or rise of a surface over its run.
    pub trait SlopeKind: uom::Kind {}
    /// How far one direction is turned from another.
    pub trait AngleKind: uom::Kind {}
    /// A share added to or taken from an amount.
    pub trait ShareKind: uom::Kind {}
    /// Relative humidity of air.
    pub trait HumidityKind: uom::Kind {}
    /// Air in fresh concrete, by volume.
    pub trait AirKind: uom::Kind {}
    /// Mass of water over mass of cementitious material.
    pub trait WaterCementKind: uom::Kind {}
    /// How fast rain comes down, as a depth of water in a time.
    pub trait RainKind: uom::Kind {}
    /// Mass of an ingredient in a volume of concrete.
    pub trait DosageKind: uom::Kind {}
}

pub(crate) const FOOT: f64 = 0.3048;
pub(crate) const INCH: f64 = 0.0254;
pub(crate) const POUND: f64 = 0.453_592_37;
pub(crate) const POUND_FORCE: f64 = 4.448_221_615_260_5;
pub(crate) const CUBIC_FOOT: f64 = 0.028_316_846_592;
pub(crate) const CUBIC_YARD: f64 = 0.764_554_857_984;
pub(crate) const FAHRENHEIT: f64 = 5.0 / 9.0;

declare_quantities! {
    /// A distance, in plan or in height.
    length::Length, "length", <P1 Z0 Z0 Z0 Z0>;
    sign Any;
    @meter = 1.0; "m", "m", ["metre", "metres", "meter", "meters"];
    @centimeter = 0.01; "cm", "cm", ["centimetre", "centimetres", "centimeter", "centimeters"];
    @millimeter = 0.001; "mm", "mm", ["millimetre", "millimetres", "millimeter", "millimeters"];
    @foot = crate::quantity::units::FOOT; "ft", "ft", ["foot", "feet", "'"];
    @inch = crate::quantity::units::INCH; "in", "in", ["inch", "inches", "\""];
    @yard = 0.9144; "yd", "yd", ["yard", "yards"];

    /// A height above the job datum.
    elevation::Elevation, "elevation", <P1 Z0 Z0 Z0 Z0>, kind crate::quantity::units::kind::Level;
    sign Any;
    @meter = 1.0; "m", "m", ["metre", "metres", "meter", "meters"];
    @millimeter = 0.001; "mm", "mm", ["millimetre", "millimetres", "millimeter", "millimeters"];
    @foot = crate::quantity::units::FOOT; "ft", "ft", ["foot", "feet", "'"];
    @inch = crate::quantity::units::INCH; "in", "in", ["inch", "inches", "\""];

    /// A surface.
    area::Area, "area", <P2 Z0 Z0 Z0 Z0>;
    sign Any;
    @square_meter = 1.0; "m2", "m2", ["sq m", "square metres", "square meters"];
    @square_foot = 0.092_903_04; "ft2", "ft2", ["sq ft", "square feet", "sf"];
    @square_inch = 0.000_645_16; "in2", "in2", ["sq in", "square inches"];
    @square_yard = 0.836_127_36; "yd2", "yd2", ["sq yd", "square yards"];

    /// A volume.
    volume::Volume, "volume", <P3 Z0 Z0 Z0 Z0>;
    sign Any;
    @cubic_meter = 1.0; "m3", "m3", ["cu m", "cubic metres", "cubic meters"];
    @liter = 0.001; "L", "l", ["l", "litre", "litres", "liter", "liters"];
    @cubic_foot = crate::quantity::units::CUBIC_FOOT; "ft3", "ft3", ["cu ft", "cubic feet", "cf"];
    @cubic_yard = crate::quantity::units::CUBIC_YARD; "yd3", "yd3", ["cu yd", "cubic yards", "yards", "yard", "cy"];
    @gallon = 0.003_785_411_784; "gal", "gal", ["gallon", "gallons"];

    /// A mass.
    mass::Mass, "mass", <Z0 P1 Z0 Z0 Z0>;
    sign Any;
    @kilogram = 1.0; "kg", "kg", ["kilogram", "kilograms"];
    @gram = 0.001; "g", "g", ["gram", "grams"];
    @pound = crate::quantity::units::POUND; "lb", "lb", ["lbs", "pound", "pounds"];
    @ton_short = 907.184_74; "ton", "ton", ["tons", "short ton", "short tons"];
    @tonne = 1000.0; "t", "t", ["tonne", "tonnes"];

    /// A force.
    force::Force, "force", <P1 P1 N2 Z0 Z0>;
    sign Any;
    @newton = 1.0; "N", "n", ["newton", "newtons"];
    @kilonewton = 1000.0; "kN", "kn", ["kilonewton", "kilonewtons"];
    @pound_force = crate::quantity::units::POUND_FORCE; "lbf", "lbf", ["lb", "lbs", "pound", "pounds"];

    /// A pressure, a stress or a strength.
    pressure::Pressure, "pressure", <N1 P1 N2 Z0 Z0>;
    sign Any;
    @pascal = 1.0; "Pa", "pa", ["pascal"];
    @kilopascal = 1.0e3; "kPa", "kpa", ["kilopascal"];
    @megapascal = 1.0e6; "MPa", "mpa", ["megapascal", "N/mm2"];
    @psi = crate::quantity::units::POUND_FORCE / (crate::quantity::units::INCH * crate::quantity::units::INCH); "psi", "psi", ["lb/in2", "lbf/in2"];
    @psf = crate::quantity::units::POUND_FORCE / 0.092_903_04; "psf", "psf", ["lb/ft2", "lbf/ft2"];

    /// Pressure under a slab for each unit of settlement: the modulus of subgrade reaction.
    subgrade_reaction::SubgradeReaction, "subgrade reaction", <N2 P1 N2 Z0 Z0>;
    sign Any;
    @pascal_per_meter = 1.0; "Pa/m", "pa_per_m", ["N/m3"];
    @megapascal_per_meter = 1.0e6; "MPa/m", "mpa_per_m", ["MN/m3"];
    @kilopascal_per_meter = 1.0e3; "kPa/m", "kpa_per_m", ["kN/m3"];
    @pci = crate::quantity::units::POUND_FORCE / (crate::quantity::units::INCH * crate::quantity::units::INCH * crate::quantity::units::INCH); "pci", "pci", ["psi/in", "lb/in3", "lbf/in3"];

    /// A force spread along a line: the load of a wall.
    line_load::LineLoad, "line load", <Z0 P1 N2 Z0 Z0>;
    sign Any;
    @newton_per_meter = 1.0; "N/m", "n_per_m", [];
    @kilonewton_per_meter = 1.0e3; "kN/m", "kn_per_m", [];
    @pound_force_per_foot = crate::quantity::units::POUND_FORCE / crate::quantity::units::FOOT; "lbf/ft", "lbf_per_ft", ["lb/ft", "plf"];

    /// The share of its length that a material grows for each degree: the coefficient of thermal expansion.
    thermal_expansion::ThermalExpansion, "thermal expansion", <Z0 Z0 Z0 N1 Z0>;
    sign Any;
    @per_kelvin = 1.0; "/K", "per_k", ["per K"];
    @per_celsius = 1.0; "/degC", "per_degc", ["/C", "per degC", "per C"];
    @per_fahrenheit = 1.0 / crate::quantity::units::FAHRENHEIT; "/degF", "per_degf", ["/F", "per degF", "per F"];

    /// Mass of a material in its own volume.
    density::Density, "density", <N3 P1 Z0 Z0 Z0>;
    sign Any;
    @kilogram_per_cubic_meter = 1.0; "kg/m3", "kg_per_m3", [];
    @pound_per_cubic_foot = crate::quantity::units::POUND / crate::quantity::units::CUBIC_FOOT; "lb/ft3", "lb_per_ft3", ["pcf"];

    /// Mass of an ingredient in a volume of concrete.
    dosage::Dosage, "dosage", <N3 P1 Z0 Z0 Z0>, kind crate::quantity::units::kind::DosageKind;
    sign NotNegative;
    @kilogram_per_cubic_meter = 1.0; "kg/m3", "kg_per_m3", [];
    @pound_per_cubic_yard = crate::quantity::units::POUND / crate::quantity::units::CUBIC_YARD; "lb/yd3", "lb_per_yd3", ["pcy"];

    /// A span of time.
    time::Time, "time", <Z0 Z0 P1 Z0 Z0>;
    sign Any;
    @second = 1.0; "s", "s", ["sec", "second", "seconds"];
    @minute = 60.0; "min", "min", ["minute", "minutes"];
    @hour = 3600.0; "h", "h", ["hr", "hour", "hours"];
    @day = 86_400.0; "d", "d", ["day", "days"];

    /// A speed.
    velocity::Velocity, "velocity", <P1 Z0 N1 Z0 Z0>;
    sign Any;
    @meter_per_second = 1.0; "m/s", "m_per_s", [];
    @kilometer_per_hour = 1.0 / 3.6; "km/h", "km_per_h", ["kph"];
    @mile_per_hour = 0.447_04; "mph", "mph", ["mi/h"];

    /// How fast rain comes down: the depth of water it would leave in a time.
    rain_intensity::RainIntensity, "rain intensity", <P1 Z0 N1 Z0 Z0>, kind crate::quantity::units::kind::RainKind;
    sign NotNegative;
    @meter_per_second = 1.0; "m/s", "m_per_s", [];
    @inch_per_hour = crate::quantity::units::INCH / 3600.0; "in/h", "in_per_h", ["in/hr", "in per h", "inches per hour"];
    @millimeter_per_hour = 0.001 / 3600.0; "mm/h", "mm_per_h", ["mm/hr", "mm per h"];

    /// A volume of water in a time.
    flow::Flow, "flow", <P3 Z0 N1 Z0 Z0>;
    sign NotNegative;
    @cubic_meter_per_second = 1.0; "m3/s", "m3_per_s", [];
    @liter_per_second = 0.001; "L/s", "l_per_s", ["l/s"];
    @gallon_per_minute = 0.003_785_411_784 / 60.0; "gal/min", "gal_per_min", ["gpm", "gallons per minute"];

    /// Mass of vapour that a floor gives off on each unit of area in a time.
    vapour_emission::VapourEmission, "vapour emission", <N2 P1 N1 Z0 Z0>;
    sign NotNegative;
    @kilogram_per_square_meter_second = 1.0; "kg/m2/s", "kg_per_m2_s", [];
    @pound_per_thousand_square_feet_day = crate::quantity::units::POUND / (1000.0 * crate::quantity::units::FOOT * crate::quantity::units::FOOT * 86_400.0); "lb/1000 ft2/24 h", "lb_per_1000ft2_24h", ["lb/1000 ft2/d", "lb/1,000 ft2/24 h", "lb per 1000 ft2 per 24 h"];
    @gram_per_square_meter_day = 0.001 / 86_400.0; "g/m2/24 h", "g_per_m2_24h", ["g/m2/d", "g per m2 per 24 h"];

    /// A temperature on its scale.
    temperature::Temperature, "temperature", <Z0 Z0 Z0 P1 Z0>, kind crate::quantity::units::kind::Level;
    sign NotNegative;
    @kelvin = 1.0; "K", "k", ["kelvin"];
    @degree_celsius = 1.0, 273.15; "degC", "degc", ["C", "deg C"];
    @degree_fahrenheit = crate::quantity::units::FAHRENHEIT, 459.67; "degF", "degf", ["F", "deg F"];

    /// A difference of two temperatures.
    temperature_difference::TemperatureDifference, "temperature difference", <Z0 Z0 Z0 P1 Z0>;
    sign Any;
    @kelvin_difference = 1.0; "K", "k", ["degC", "C"];
    @fahrenheit_difference = crate::quantity::units::FAHRENHEIT; "degF", "degf", ["F"];

    /// A plain ratio of two like quantities.
    ratio::Ratio, "ratio", <Z0 Z0 Z0 Z0 Z0>;
    sign Any;
    @one = 1.0; "1", "ratio", ["ratio", "times"];
    @percent = 0.01; "%", "percent", ["percent"];

    /// How far one direction is turned from another, counter-clockwise.
    angle::Angle, "angle", <Z0 Z0 Z0 Z0 Z0>, kind crate::quantity::units::kind::AngleKind;
    sign Any;
    @radian = 1.0; "rad", "rad", ["radian", "radians"];
    @degree = std::f64::consts::PI / 180.0; "deg", "deg", ["degree", "degrees"];

    /// The fall or rise of a surface over its run.
    slope::Slope, "slope", <Z0 Z0 Z0 Z0 Z0>, kind crate::quantity::units::kind::SlopeKind;
    sign Any;
    @rise_over_run = 1.0; "ft/ft", "ft_per_ft", ["m/m"];
    @percent = 0.01; "%", "percent", ["percent", "cm/m"];
    @inch_per_foot = crate::quantity::units::INCH / crate::quantity::units::FOOT; "in/ft", "in_per_ft", ["in per ft", "inches per foot", "inch per foot"];
    @millimeter_per_meter = 0.001; "mm/m", "mm_per_m", [];

    /// A share of an amount: waste, an allowance.
    share::Share, "share", <Z0 Z0 Z0 Z0 Z0>, kind crate::quantity::units::kind::ShareKind;
    sign NotNegative;
    @fraction = 1.0; "of 1", "fraction", [];
    @percent = 0.01; "%", "percent", ["percent"];

    /// Relative humidity.
    humidity::Humidity, "humidity", <Z0 Z0 Z0 Z0 Z0>, kind crate::quantity::units::kind::HumidityKind;
    sign NotNegative;
    @fraction = 1.0; "of 1", "fraction", [];
    @percent = 0.01; "%", "percent", ["percent", "% RH"];

    /// Air in fresh concrete, by volume.
    air_content::AirContent, "air content", <Z0 Z0 Z0 Z0 Z0>, kind crate::quantity::units::kind::AirKind;
    sign NotNegative;
    @fraction = 1.0; "of 1", "fraction", [];
    @percent = 0.01; "%", "percent", ["percent"];

    /// Mass of water over mass of cementitious material.
    water_cement_ratio::WaterCementRatio, "water-cement ratio", <Z0 Z0 Z0 Z0 Z0>, kind crate::quantity::units::kind::WaterCementKind;
    sign NotNegative;
    @ratio = 1.0; "w/cm", "w_per_cm", ["lb/lb", "kg/kg"];

    /// An amount of money, in whatever currency the caller's prices are.
    money::Money, "money", <Z0 Z0 Z0 Z0 P1>;
    sign Any;
    @currency_unit = 1.0; "money", "money", [];

    /// The price of a volume: concrete, grinding.
    volume_price::VolumePrice, "price of a volume", <N3 Z0 Z0 Z0 P1>;
    sign NotNegative;
    @per_cubic_meter = 1.0; "/m3", "per_m3", ["per m3", "per cubic metre", "per cubic meter"];
    @per_cubic_yard = 1.0 / crate::quantity::units::CUBIC_YARD; "/yd3", "per_yd3", ["per yd3", "per cubic yard", "per yard", "/yard"];
    @per_cubic_foot = 1.0 / crate::quantity::units::CUBIC_FOOT; "/ft3", "per_ft3", ["per ft3", "per cubic foot"];

    /// The price of an area: bonding, milling, breaking out.
    area_price::AreaPrice, "price of an area", <N2 Z0 Z0 Z0 P1>;
    sign NotNegative;
    @per_square_meter = 1.0; "/m2", "per_m2", ["per m2", "per square metre", "per square meter"];
    @per_square_foot = 1.0 / 0.092_903_04; "/ft2", "per_ft2", ["per ft2", "per square foot", "per sq ft"];

    /// The price of a mass: dumping, steel.
    mass_price::MassPrice, "price of a mass", <Z0 N1 Z0 Z0 P1>;
    sign NotNegative;
    @per_kilogram = 1.0; "/kg", "per_kg", ["per kg", "per kilogram"];
    @per_ton = 1.0 / 907.184_74; "/ton", "per_ton", ["per ton", "per short ton"];
    @per_tonne = 0.001; "/t", "per_t", ["per t", "per tonne"];
}

uom::system! {
    /// Quantities of the project: length, mass, time, temperature and money as base quantities.
    quantities: Q {
        length: meter, L;
        mass: kilogram, M;
        time: second, T;
        temperature: kelvin, Th;
        money: currency_unit, Mo;
    }
    /// Base units: metre, kilogram, second, kelvin, and the unit of the currency in use.
    units: U {
        mod length::Length,
        mod elevation::Elevation,
        mod area::Area,
        mod volume::Volume,
        mod mass::Mass,
        mod force::Force,
        mod pressure::Pressure,
        mod subgrade_reaction::SubgradeReaction,
        mod line_load::LineLoad,
        mod thermal_expansion::ThermalExpansion,
        mod density::Density,
        mod dosage::Dosage,
        mod time::Time,
        mod velocity::Velocity,
        mod rain_intensity::RainIntensity,
        mod flow::Flow,
        mod vapour_emission::VapourEmission,
        mod temperature::Temperature,
        mod temperature_difference::TemperatureDifference,
        mod ratio::Ratio,
        mod angle::Angle,
        mod slope::Slope,
        mod share::Share,
        mod humidity::Humidity,
        mod air_content::AirContent,
        mod water_cement_ratio::WaterCementRatio,
        mod money::Money,
        mod volume_price::VolumePrice,
        mod area_price::AreaPrice,
        mod mass_price::MassPrice,
    }
}

/// The quantities over `f64`.
pub mod f64 {
    mod system {
        pub(super) use super::super::*;
    }
    Q!(self::system, f64);
}
pub use self::f64::*;
