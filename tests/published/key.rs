//! Keys that carry their unit: `benchmark_ft` is the port `benchmark` in feet.

use overslab::operation::{Kind, Port};
use overslab::quantity::Unit;

/// The port that a key names, and the unit at its end where the port is a quantity.
pub(super) fn port_of<'a>(key: &str, ports: &'a [Port]) -> Result<(&'a Port, Option<&'static Unit>), String> {
    for port in ports {
        match port.kind {
            Kind::Number(kind) => {
                let suffix = key.strip_prefix(port.name).and_then(|rest| rest.strip_prefix('_'));
                let unit = suffix.and_then(|suffix| {
                    kind.quantity.units.iter().copied().find(|unit| unit.suffix == suffix)
                });
                if let Some(unit) = unit {
                    return Ok((port, Some(unit)));
                }
            }
            _ if key == port.name => return Ok((port, None)),
            _ => {}
        }
    }
    let known: Vec<&str> = ports.iter().map(|port| port.name).collect();
    Err(format!("{key} is none of {}, with its unit at the end", known.join(", ")))
}
