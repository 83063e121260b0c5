//! Breaking the old slab out, in words.

use super::Page;
use super::water::capital;
use crate::job::{NewFloor, TearOutReport};

/// What is hauled, dug and poured, what it costs, and both ways side by side.
pub(super) fn tear_out(page: &mut Page, floor: &NewFloor) {
    let Some(out) = &floor.tear_out else { return };
    let all = if out.whole { "all of it" } else { "a part" };
    let (area, thick) = (&out.area.text, &out.old_thickness.text);
    page.section("TEAR OUT", &format!("Breaking out {all}: {area}, the old slab {thick} thick."));
    if let Some(verdict) = &out.verdict {
        page.line(&format!("The old slab: {verdict}."));
    }
    page.line(&format!("Hauled: {}.", hauled(out)));
    if out.dig.us > 0.0 {
        page.line(&format!(
            "Dug: {} deep below the old slab, {} of ground.",
            out.dig_depth.text, out.dig.text
        ));
    }
    if out.base.us > 0.0 {
        let (base, bought) = (&out.base.text, &out.base_bought.text);
        page.line(&format!("New base: {base} compacted, {bought} loose as it is bought."));
    }
    if let (Some(thick), Some(concrete)) = (&out.new_thickness, &out.concrete) {
        page.line(&format!("New slab: {} thick, {} of concrete.", thick.text, concrete.text));
    }
    for cost in &out.costs {
        let money = cost.money.as_ref().map_or("no price", |money| money.text.as_str());
        page.row("", &capital(&cost.what), money, "");
    }
    if let Some(total) = &out.total {
        page.row("", "Breaking out, in all", &total.text, "");
    }
    page.line(&format!("{}.", out.text));
}

fn hauled(out: &TearOutReport) -> String {
    let (in_place, mass, loose) = (&out.in_place.text, &out.mass.text, &out.loose.text);
    format!("{in_place} in place, {mass}, {loose} broken up: {}", said_loads(out.loads, &out.box_weight.text))
}

fn said_loads(loads: u32, each: &str) -> String {
    match loads {
        1 => format!("one load, a box carries {each}"),
        many => format!("{many} loads, a box carries {each}"),
    }
}
