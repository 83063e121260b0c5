//! What a part of the report takes because nobody gave it.

use crate::assumption::Assumption;
use crate::job::report::TakenReport;
use crate::quantity::{Given, Typed};

/// What was taken and not given.
#[derive(Default)]
pub(super) struct Taken(pub(super) Vec<TakenReport>);

impl Taken {
    pub(super) fn or<Q: Typed>(
        &mut self,
        given: Option<&Given<Q>>,
        what: &str,
        assumption: &Assumption<Q>,
    ) -> Q {
        given.map_or_else(|| self.assumed(what, assumption), |given| given.value)
    }

    pub(super) fn assumed<Q: Typed>(&mut self, what: &str, assumption: &Assumption<Q>) -> Q {
        self.word(what, assumption.words, assumption.why);
        assumption.value()
    }

    pub(super) fn word(&mut self, what: &str, value: &str, why: &str) {
        self.0.push(TakenReport { what: what.to_owned(), value: value.to_owned(), why: why.to_owned() });
    }
}
