//! What the rows of the verdict give.

use crate::condition::rule::{Standing, Way};
use crate::condition::{Ask, Finding, Reason, Take, TakenFinding, Verdict};
use crate::note::{Note, NoteCode};
use crate::operation::{Answer, Choice, Column, Columns, Kind, Port, TableType, Value};
use crate::port;

/// Reasons.
static REASONS: TableType = TableType {
    name: "reasons",
    meaning: "a rule that weighs on a way, in the order of precedence",
    columns: &[
        port!(way: Kind::Choice(Way::WORDS), "which way"),
        port!(rule: Kind::Text, "the rule by name"),
        port!(findings: Kind::Text, "the findings that it looks at; none where it belongs to the way in any case"; optional),
        port!(standing: Kind::Choice(Standing::WORDS), "where it alone would put the way"),
        port!(says: Kind::Text, "the reason in plain words"),
        port!(follows: Kind::Text, "the work that follows; for a refusal or a stop, what would lift it"; optional),
        port!(basis: Kind::Text, "where the rule comes from"),
    ],
    least_rows: 0,
};

/// Work.
static WORK: TableType = TableType {
    name: "work",
    meaning: "work that a way takes, in the order of precedence",
    columns: &[port!(way: Kind::Choice(Way::WORDS), "which way"), port!(what: Kind::Text, "what is done")],
    least_rows: 0,
};

/// What to find out.
static ASKS: TableType = TableType {
    name: "asks",
    meaning: "findings that could turn the verdict, alone or all of a row together; the fewest first",
    columns: &[
        port!(findings: Kind::Text, "which findings, by name"),
        port!(ask: Kind::Text, "how to find out"),
        port!(turns: Kind::Text, "the ways that they could turn, and to what"),
        port!(taken: Kind::Choice(bool::WORDS), "whether a word is taken until it is known, so that no verdict waits"),
    ],
    least_rows: 0,
};

/// Stops by name.
static STOPS: TableType = TableType {
    name: "stops",
    meaning: "a stop by name",
    columns: &[
        port!(rule: Kind::Text, "the rule by name"),
        port!(says: Kind::Text, "why, and what lifts it"),
    ],
    least_rows: 0,
};

/// What was taken.
static TAKEN: TableType = TableType {
    name: "taken_findings",
    meaning: "a finding that was not given and was taken",
    columns: &[
        port!(finding: Kind::Text, "which finding"),
        port!(word: Kind::Text, "the word taken"),
        port!(why: Kind::Text, "why"),
    ],
    least_rows: 0,
};

/// The results of a verdict.
pub(super) static RESULTS: &[Port] = &[
    port!(take: Kind::Choice(Take::WORDS), "the way to take"),
    port!(unbonded: Kind::Choice(Standing::WORDS), "pouring over it, unbonded"),
    port!(bonded: Kind::Choice(Standing::WORDS), "bonding to it"),
    port!(partly_bonded: Kind::Choice(Standing::WORDS), "pouring straight on; only where that is asked for"; optional),
    port!(break_out_part: Kind::Choice(Standing::WORDS), "breaking out the bad parts"),
    port!(break_out_whole: Kind::Choice(Standing::WORDS), "breaking it all out"),
    port!(reasons: Kind::Table(&REASONS), "the rules that weigh, way by way"),
    port!(work: Kind::Table(&WORK), "the work that each way takes"),
    port!(asks: Kind::Table(&ASKS), "what could turn the verdict and is not known"),
    port!(stops: Kind::Table(&STOPS), "the stops by name"),
    port!(taken_findings: Kind::Table(&TAKEN), "what was not given and was taken"),
    port!(text: Kind::Text, "the verdict in plain words, one idea to a line, what can hurt with it"),
];

/// A verdict as an answer.
pub(super) fn answer(verdict: &Verdict) -> Answer {
    let stands =
        |way: Way| verdict.standing(way).map_or(Value::Absent, |standing| Value::Choice(standing as usize));
    let mut results = vec![Value::Choice(verdict.take as usize)];
    results.extend(Way::ALL.map(stands));
    results.extend([
        reasons(&verdict.reasons),
        work(verdict),
        asks(&verdict.asks),
        stops(verdict),
        taken(&verdict.taken),
        Value::Text(verdict.to_text()),
    ]);
    Answer::of(results).with_notes(notes(verdict))
}

fn notes(verdict: &Verdict) -> Vec<Note> {
    let mut list = Vec::new();
    let names = |names: Vec<&str>| names.join(", ");
    if !verdict.stops.is_empty() {
        let stops = names(verdict.stops.iter().map(|rule| rule.id).collect());
        list.push(Note::new(NoteCode::StopNamed, format!("stops by name: {stops}")));
    }
    let open = verdict.asks.iter().filter(|ask| !ask.taken);
    let mut asked: Vec<&str> =
        open.flat_map(|ask| ask.findings.iter().map(|finding| finding.name())).collect();
    asked.sort_unstable();
    asked.dedup();
    if !asked.is_empty() {
        list.push(Note::new(NoteCode::FindingsAsked, format!("to be found out: {}", names(asked))));
    }
    if !verdict.taken.is_empty() {
        let taken = names(verdict.taken.iter().map(|taken| taken.finding.name()).collect());
        list.push(Note::new(NoteCode::FindingsTaken, format!("not given and taken: {taken}")));
    }
    list
}

fn texts(rows: impl Iterator<Item = String>) -> Column {
    Column::Texts(rows.map(Some).collect())
}

fn table(rows: usize, columns: Vec<Column>) -> Value {
    Value::Table(Columns { rows, columns })
}

fn reasons(rows: &[Reason]) -> Value {
    let findings = |reason: &Reason| {
        let names: Vec<&str> = reason.rule.when.iter().map(|when| when.finding().name()).collect();
        Some(names.join(", ")).filter(|names| !names.is_empty())
    };
    table(
        rows.len(),
        vec![
            Column::Choices(rows.iter().map(|reason| Some(reason.way as usize)).collect()),
            texts(rows.iter().map(|reason| reason.rule.id.to_owned())),
            Column::Texts(rows.iter().map(findings).collect()),
            Column::Choices(rows.iter().map(|reason| Some(reason.then.effect.standing() as usize)).collect()),
            texts(rows.iter().map(|reason| reason.rule.said())),
            Column::Texts(rows.iter().map(|reason| reason.then.work.map(str::to_owned)).collect()),
            texts(rows.iter().map(|reason| reason.rule.basis.name().to_owned())),
        ],
    )
}

fn work(verdict: &Verdict) -> Value {
    let judged = verdict.ways.iter().map(|judged| judged.way);
    let rows: Vec<(Way, &str)> =
        judged.flat_map(|way| verdict.work(way).into_iter().map(move |work| (way, work))).collect();
    table(
        rows.len(),
        vec![
            Column::Choices(rows.iter().map(|(way, _)| Some(*way as usize)).collect()),
            texts(rows.iter().map(|(_, work)| (*work).to_owned())),
        ],
    )
}

fn asks(rows: &[Ask]) -> Value {
    let joined = |ask: &Ask, of: fn(Finding) -> &'static str, by: &str| {
        ask.findings.iter().map(|&finding| of(finding)).collect::<Vec<_>>().join(by)
    };
    table(
        rows.len(),
        vec![
            texts(rows.iter().map(|ask| joined(ask, Finding::name, ", "))),
            texts(rows.iter().map(|ask| joined(ask, Finding::ask, "; "))),
            texts(rows.iter().map(turns)),
            Column::Choices(rows.iter().map(|ask| Some(usize::from(ask.taken))).collect()),
        ],
    )
}

/// What an ask could turn, in words that a program reads too: `unbonded: refused, bonded: refused`.
fn turns(ask: &Ask) -> String {
    ask.turns.iter().map(|(way, to)| format!("{}: {}", way.word(), to.word())).collect::<Vec<_>>().join(", ")
}

fn stops(verdict: &Verdict) -> Value {
    table(
        verdict.stops.len(),
        vec![
            texts(verdict.stops.iter().map(|rule| rule.id.to_owned())),
            texts(verdict.stops_said().into_iter()),
        ],
    )
}

fn taken(rows: &[TakenFinding]) -> Value {
    let word =
        |taken: &TakenFinding| taken.finding.words().get(taken.word).copied().unwrap_or_default().to_owned();
    table(
        rows.len(),
        vec![
            texts(rows.iter().map(|taken| taken.finding.name().to_owned())),
            texts(rows.iter().map(word)),
            texts(rows.iter().map(|taken| taken.why.clone())),
        ],
    )
}
