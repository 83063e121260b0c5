//! One scalar operation: the plain typed function, the row of the table, and the call over the C border.

use criterion::Criterion;
use overslab::operation::call::scalar_in;
use overslab::operations::find;
use overslab::quantity::{Length, System, length::foot, length::inch, read, slope::inch_per_foot};
use std::hint::black_box;
use std::ptr::null_mut;

pub(crate) fn benches(c: &mut Criterion) {
    let mut group = c.benchmark_group("fall");
    group.bench_function("typed function", |b| {
        b.iter(|| {
            let (drop, run) = (Length::new::<inch>(black_box(2.0)), Length::new::<foot>(black_box(20.0)));
            overslab::grade::fall::fall(drop, run).map(|fall| fall.get::<inch_per_foot>())
        });
    });
    group.bench_function("row of the table", |b| {
        let row = find("fall").unwrap();
        let mut results = [0.0];
        b.iter(|| {
            scalar_in(row, System::Us, &[black_box(2.0), black_box(20.0)], &mut results).map(|_| results[0])
        });
    });
    group.bench_function("C call", |b| {
        let mut fall = 0.0;
        let mut message = [0; 201];
        b.iter(|| {
            #[expect(unsafe_code, reason = "the call over the C border is what is measured")]
            // SAFETY: every pointer is valid for the length given or null where null is allowed.
            let status = unsafe {
                overslab_ffi::generated::grade::ovs_fall_us(
                    black_box(2.0),
                    black_box(20.0),
                    &raw mut fall,
                    null_mut(),
                    message.as_mut_ptr(),
                    201,
                )
            };
            (status, fall)
        });
    });
    group.finish();
    c.bench_function("reading of 5' 3 1/2\"", |b| b.iter(|| read::<Length>(black_box("5' 3 1/2\""))));
}
