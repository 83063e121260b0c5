//! What to order, and what rounding and margin cost.

use super::Page;
use crate::job::NewFloor;

pub(super) fn order(page: &mut Page, floor: &NewFloor) {
    let order = &floor.order;
    for (index, line) in order.lines.iter().enumerate() {
        let label = if index == 0 { "ORDER" } else { "" };
        let remark = if line.taken { "assumed" } else { "" };
        page.row(label, &line.name, &line.volume.text, remark);
    }
    let trucks = match order.trucks {
        1 => format!("one truck of {}", order.capacity.text),
        many => format!("{many} trucks of {}, the last with {}", order.capacity.text, order.last.text),
    };
    page.row("", "figured", &order.figured.text, &format!("ORDER {}, {trucks}", order.ordered.text));
}

pub(super) fn rounding(page: &mut Page, floor: &NewFloor) {
    let Some(rounding) = &floor.rounding else { return };
    let to = format!("Heights to {} cost {}", rounding.step.text, rounding.rounding.text);
    let margin = format!("the margin costs {}", rounding.margin.text);
    let kept = [(to, rounding.step.us > 0.0), (margin, rounding.margin.us > 0.0)];
    let kept: Vec<String> = kept.into_iter().filter_map(|(words, costs)| costs.then_some(words)).collect();
    if !kept.is_empty() {
        page.section("ROUNDING", &format!("{}.", kept.join("; ")));
    }
}
