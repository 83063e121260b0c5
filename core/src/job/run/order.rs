//! The order of a job.

use crate::assumption::{PLANT_STEP, TRUCK, WASTE};
use crate::failure::{Code, Failure, Result, together};
use crate::job::input::{ExtraInput, Job};
use crate::job::report::{OrderLine, OrderReport};
use crate::job::say;
use crate::order::list::{Allowance, Order, Part, Request, order};
use crate::order::volume::block;
use crate::quantity::Volume;

impl Job {
    pub(super) fn order_for(&self, floor: Volume) -> Result<Order> {
        let mut parts = vec![Part { name: "floor".to_owned(), volume: floor }];
        for (index, extra) in self.order.extras.iter().enumerate() {
            let volume =
                extra.volume().map_err(|failure| failure.under(&format!("order.extras[{index}]")))?;
            parts.push(Part { name: extra.name.clone(), volume });
        }
        let allowances = match &self.order.allowances {
            Some(list) => {
                list.iter().map(|a| Allowance { name: a.name.clone(), share: a.share.value }).collect()
            }
            None => vec![Allowance { name: "waste".to_owned(), share: WASTE.value() }],
        };
        let step = self.order.step.as_ref().map_or(PLANT_STEP.value(), |given| given.value);
        let capacity = self.order.truck.as_ref().map_or(TRUCK.value(), |given| given.value);
        order(&Request { parts, allowances, step, capacity })
            .map_err(|failure| in_job(failure).under("order"))
    }

    pub(super) fn order_report(&self, order: &Order, floor: Volume) -> OrderReport {
        let line = |name: &str, volume: Volume, taken: bool| OrderLine {
            name: name.to_owned(),
            volume: say::body(volume),
            taken,
        };
        let mut lines = vec![line("floor", floor, false)];
        lines.extend(
            self.order.extras.iter().filter_map(|extra| Some(line(&extra.name, extra.volume().ok()?, false))),
        );
        let taken = self.order.allowances.is_none();
        lines.extend(order.allowances.iter().map(|part| line(&part.name, part.volume, taken)));
        let capacity = self.order.truck.as_ref().map_or(TRUCK.value(), |given| given.value);
        OrderReport {
            lines,
            net: say::body(order.net),
            figured: say::body(order.figured),
            ordered: say::sold(order.ordered),
            spare: say::body(order.spare),
            trucks: order.trucks.loads,
            capacity: say::sold(capacity),
            last: say::sold(order.trucks.last),
        }
    }
}

/// The paths of the order in the words of the job: the floor is the first part, the extras follow it.
fn in_job(mut failure: Box<Failure>) -> Box<Failure> {
    if failure.path == "capacity" {
        "truck".clone_into(&mut failure.path);
    }
    if let Some(rest) = failure.path.strip_prefix("parts[").map(str::to_owned)
        && let Some((index, tail)) = rest.split_once(']')
        && let Some(extra) = index.parse::<usize>().ok().and_then(|index| index.checked_sub(1))
    {
        failure.path = format!("extras[{extra}]{tail}");
    }
    failure
}

impl ExtraInput {
    /// Its volume, or length x width x mean depth.
    pub(super) fn volume(&self) -> Result<Volume> {
        use crate::order::list::PART;
        let volume = match (&self.volume, &self.length, &self.width, &self.mean) {
            (Some(volume), None, None, None) => volume.value,
            (None, Some(length), Some(width), Some(mean)) => block(length.value, width.value, mean.value)
                .map_err(|mut failure| {
                    if failure.path == "depth" {
                        "mean".clone_into(&mut failure.path);
                    }
                    failure
                })?,
            _ => {
                return Err(Failure::new(Code::Contradiction, "")
                    .written(together(&[
                        ("volume", self.volume.is_some()),
                        ("length", self.length.is_some()),
                        ("width", self.width.is_some()),
                        ("mean", self.mean.is_some()),
                    ]))
                    .allowed("volume; or length, width and mean")
                    .remedy("give one of the two, whole"));
            }
        };
        crate::failure::check("volume", volume, PART)
    }
}
