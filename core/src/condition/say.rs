//! The verdict in plain words, one idea to a line.

use super::asks::Ask;
use super::findings::Finding;
use super::rule::{Effect, Standing, Way, When};
use super::rules::rules;
use super::verdict::{Take, Verdict, WayVerdict};

impl Verdict {
    /// The way that is taken, where one is.
    #[must_use]
    pub fn taken_way(&self) -> Option<Way> {
        match self.take {
            Take::Unbonded => Some(Way::Unbonded),
            Take::Bonded => Some(Way::Bonded),
            Take::BreakOutPart => Some(Way::BreakOutPart),
            Take::BreakOutWhole => Some(Way::BreakOutWhole),
            Take::FindOut | Take::Stop => None,
        }
    }

    /// Whether it spans free or rests on framing: no thickness is told then.
    #[must_use]
    pub fn spans(&self) -> bool {
        self.stops.iter().any(|rule| rule.caution == Some(crate::caution::Caution::SuspendedFloors))
    }

    /// The verdict in one sentence.
    #[must_use]
    pub fn headline(&self) -> String {
        let after = match self.taken_way().and_then(|way| self.standing(way)) {
            Some(Standing::AllowedAfterWork) => ", after the work below",
            _ => "",
        };
        match self.take {
            Take::Unbonded => format!("The old slab may stay: pour over it unbonded{after}."),
            Take::Bonded => format!("The old slab may stay: bond to it{after}."),
            Take::BreakOutPart => match self.rest {
                Some(rest) => {
                    format!("Break out the parts that need it{after}; over the rest: {}.", rest.said())
                }
                None => format!("Break out the parts that need it{after}."),
            },
            Take::BreakOutWhole => format!("Break it all out and pour a new slab{after}."),
            Take::FindOut => "No verdict yet: first find out what is asked below.".to_owned(),
            Take::Stop => format!("STOP: {}.", self.why_stop()),
        }
    }

    fn why_stop(&self) -> String {
        let stopped = |judged: &&WayVerdict| judged.standing == Standing::Stop;
        let rule = self.ways.iter().find(stopped).and_then(|judged| judged.governed_by);
        rule.map_or_else(|| "no way is open".to_owned(), super::Rule::said)
    }

    /// What speaks for the way to take: findings that are as good as can be, where worse ones would refuse it.
    #[must_use]
    pub fn speaks_for(&self) -> Vec<&'static str> {
        let Some(way) = self.taken_way().filter(|way| *way != Way::BreakOutWhole) else { return Vec::new() };
        let refuses = |finding: Finding| {
            rules().any(|rule| {
                let weighs = |when: &When| matches!(when, When::AtLeast(known, _) if *known == finding);
                rule.on(way).is_some_and(|then| then.effect > Effect::AfterWork)
                    && rule.when.iter().any(weighs)
            })
        };
        let best = Finding::ALL.iter().copied().filter(|&finding| self.findings.get(finding) == Some(0));
        best.filter(|&finding| refuses(finding)).map(|finding| finding.says(0)).collect()
    }

    /// Why a way stands where it stands: what does most to it first.
    #[must_use]
    pub fn reasons_said(&self, way: Way) -> Vec<String> {
        let mut of_way: Vec<_> = self
            .reasons
            .iter()
            .filter(|reason| reason.way == way && reason.then.effect > Effect::BelongsTo)
            .collect();
        of_way.sort_by_key(|reason| std::cmp::Reverse(reason.then.effect));
        of_way.into_iter().map(|reason| reason.rule.said()).collect()
    }

    /// The stops by name, each with what lifts it.
    #[must_use]
    pub fn stops_said(&self) -> Vec<String> {
        let said = |rule: &&'static super::Rule| {
            let works = rule.then.iter().filter_map(|then| then.work).collect::<Vec<_>>();
            format!("{}: {}", rule.said(), works.join("; "))
        };
        self.stops.iter().map(said).collect()
    }

    /// A way that is not taken, in one line: where it stands, and why.
    #[must_use]
    pub fn way_said(&self, judged: &WayVerdict) -> String {
        let why = match judged.governed_by {
            Some(rule) => rule.said(),
            None if judged.standing == Standing::Refused || judged.standing == Standing::Stop => {
                "the rest of the slab could not be poured over".to_owned()
            }
            None => String::new(),
        };
        let lifts = judged
            .governed_by
            .and_then(|rule| rule.on(judged.way))
            .filter(|then| then.effect > Effect::AfterWork);
        let lifts = lifts.and_then(|then| then.work).map(|work| format!(" - {work}")).unwrap_or_default();
        let because = if why.is_empty() { String::new() } else { format!(": {why}") };
        format!("{}: {}{because}{lifts}", judged.way.said(), judged.standing.said())
    }

    /// All of it, one idea to a line.
    #[must_use]
    pub fn to_text(&self) -> String {
        let mut lines = vec![self.headline()];
        lines.extend(self.stops_said().into_iter().map(|stop| format!("STOP: {stop}.")));
        let good = self.speaks_for();
        if !good.is_empty() {
            lines.push(format!("For it: {}.", good.join("; ")));
        }
        if let Some(way) = self.taken_way() {
            lines.extend(self.reasons_said(way).into_iter().map(|reason| format!("Mind: {reason}.")));
            lines.extend(self.work(way).into_iter().map(|work| format!("Work: {work}.")));
        }
        let others = self.ways.iter().filter(|judged| Some(judged.way) != self.taken_way());
        lines.extend(others.map(|judged| format!("Not taken: {}.", self.way_said(judged))));
        lines.extend(self.asks.iter().map(|ask| format!("Find out: {}.", ask.said())));
        lines.extend(
            self.taken
                .iter()
                .map(|taken| format!("Taken: {} - {}.", taken.finding.says(taken.word), taken.why)),
        );
        lines.extend(self.cautions.iter().map(|caution| format!("Care: {}", caution.text())));
        lines.join("\n")
    }
}

impl Ask {
    /// What to find out, in a line.
    #[must_use]
    pub fn said(&self) -> String {
        let each = self.findings.iter().map(|finding| format!("{} ({})", finding.meaning(), finding.ask()));
        format!("{} - could turn: {}", each.collect::<Vec<_>>().join(" and "), self.turns_said())
    }

    /// What it could turn: `pour over, unbonded to no`.
    #[must_use]
    pub fn turns_said(&self) -> String {
        let turns = self.turns.iter().map(|(way, to)| format!("{} ({})", way.said(), to.said()));
        turns.collect::<Vec<_>>().join(", ")
    }
}
