//! First calls from many threads at once, and many calls, give the same bits.

use super::c_library::{Arg, library};
use super::c_scalars::example;
use super::c_values::{Buffer, Results, argument, name, named, scalar_rows};

#[test]
fn threads_do_not_disturb_each_other() {
    let once = |round: usize| -> Vec<u64> {
        let mut bits = Vec::new();
        for (row, system) in scalar_rows() {
            let mut inputs = example(row, system);
            // Every other round is refused, so that messages are made as well.
            if round % 2 == 1 {
                inputs[0] = -1.0;
            }
            let (mut results, mut message) = (Results::of(row, 1), Buffer::message());
            let ports = row.ports.iter().zip(&inputs);
            let arguments = [
                ports.map(|(port, number)| argument(port, system, *number)).collect(),
                results.arguments(row, system),
                vec![named("notes", Arg::NULL)],
                message.arguments("msg"),
            ];
            let status = library().call(&name(row, system), &arguments.concat()).status();
            bits.push(u64::from(status.unsigned_abs()));
            bits.extend((0..row.results.len()).map(|place| results.get(row, place, 0).to_bits()));
            bits.extend(message.text().bytes().map(u64::from));
        }
        bits
    };
    let work = || (0..200).map(once).collect::<Vec<_>>();
    let alone = work();
    std::thread::scope(|scope| {
        let threads: Vec<_> = (0..8).map(|_| scope.spawn(work)).collect();
        for thread in threads {
            assert_eq!(thread.join().unwrap(), alone);
        }
    });
}
