//! Names in Calc: of functions as typed in a cell, and of the methods behind them, which stand in saved sheets.

use overslab::quantity::System;

/// What is wanted of an operation: one function for each.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Want {
    /// Its results.
    Value,
    /// The reason of a refusal, or the notes.
    Why,
    /// One result by name.
    Get,
}

impl Want {
    /// All, in the order of the interface.
    pub const ALL: [Self; 3] = [Self::Value, Self::Why, Self::Get];

    /// The end of the name typed in a cell.
    #[must_use]
    pub const fn suffix(self) -> &'static str {
        match self {
            Self::Value => "",
            Self::Why => "_WHY",
            Self::Get => "_GET",
        }
    }
}

/// The six functions of an operation, in the order of the interface.
pub fn functions() -> impl Iterator<Item = (System, Want)> {
    System::ALL.into_iter().flat_map(|system| Want::ALL.map(|want| (system, want)))
}

/// The value function as typed in a cell: `OVS_FALL_US`.
#[must_use]
pub fn shown(operation: &str, system: System) -> String {
    format!("OVS_{operation}_{}", system.word()).to_ascii_uppercase()
}

/// Any function as typed in a cell: `OVS_FALL_US_WHY`.
#[must_use]
pub fn typed(operation: &str, system: System, want: Want) -> String {
    shown(operation, system) + want.suffix()
}

/// The method behind a function: `ovsFallUsWhy`. The interface language allows no underscores.
#[must_use]
pub fn method(operation: &str, system: System, want: Want) -> String {
    let suffix = want.suffix().to_ascii_lowercase();
    camel(&format!("ovs_{operation}_{}{suffix}", system.word()))
}

/// An argument in the interface, out of the way of the words of its language: `argRun`.
#[must_use]
pub fn argument(port: &str) -> String {
    camel(&format!("arg_{port}"))
}

/// The first part of every method of an operation: `ovsFall`.
#[must_use]
pub fn stem(operation: &str) -> String {
    camel(&format!("ovs_{operation}"))
}

fn camel(name: &str) -> String {
    let mut parts = name.split('_');
    let first = parts.next().unwrap_or_default().to_owned();
    parts.fold(first, |text, part| {
        let (head, tail) = part.split_at(part.len().min(1));
        text + &head.to_ascii_uppercase() + tail
    })
}
