//! The operations of `condition`.
//!
//! Made from the table of operations: change the table and run `cargo run -p overslab-tests`.

use crate::answer::ovs_answer;
use crate::border::{Given, Message, Notes, Passed, Request, TextOut, record, row};
use overslab::operation::Operation;
use overslab::operations::OPERATIONS;
use overslab::quantity::System;
use std::ffi::{c_char, c_int};
use super::records::ovs_findings;

/// The result `take`: the way to take.
pub const OVS_CONDITION_TAKE: c_int = 0;

/// The result `unbonded`: pouring over it, unbonded.
pub const OVS_CONDITION_UNBONDED: c_int = 1;

/// The result `bonded`: bonding to it.
pub const OVS_CONDITION_BONDED: c_int = 2;

/// The result `partly_bonded`: pouring straight on; only where that is asked for.
pub const OVS_CONDITION_PARTLY_BONDED: c_int = 3;

/// The result `break_out_part`: breaking out the bad parts.
pub const OVS_CONDITION_BREAK_OUT_PART: c_int = 4;

/// The result `break_out_whole`: breaking it all out.
pub const OVS_CONDITION_BREAK_OUT_WHOLE: c_int = 5;

/// The result `reasons`: the rules that weigh, way by way.
pub const OVS_CONDITION_REASONS: c_int = 6;

/// The column `way` of `reasons`: which way.
pub const OVS_CONDITION_REASONS_WAY: c_int = 0;

/// The column `rule` of `reasons`: the rule by name.
pub const OVS_CONDITION_REASONS_RULE: c_int = 1;

/// The column `findings` of `reasons`: the findings that it looks at; none where it belongs to the way in any case.
pub const OVS_CONDITION_REASONS_FINDINGS: c_int = 2;

/// The column `standing` of `reasons`: where it alone would put the way.
pub const OVS_CONDITION_REASONS_STANDING: c_int = 3;

/// The column `says` of `reasons`: the reason in plain words.
pub const OVS_CONDITION_REASONS_SAYS: c_int = 4;

/// The column `follows` of `reasons`: the work that follows; for a refusal or a stop, what would lift it.
pub const OVS_CONDITION_REASONS_FOLLOWS: c_int = 5;

/// The column `basis` of `reasons`: where the rule comes from.
pub const OVS_CONDITION_REASONS_BASIS: c_int = 6;

/// The result `work`: the work that each way takes.
pub const OVS_CONDITION_WORK: c_int = 7;

/// The column `way` of `work`: which way.
pub const OVS_CONDITION_WORK_WAY: c_int = 0;

/// The column `what` of `work`: what is done.
pub const OVS_CONDITION_WORK_WHAT: c_int = 1;

/// The result `asks`: what could turn the verdict and is not known.
pub const OVS_CONDITION_ASKS: c_int = 8;

/// The column `findings` of `asks`: which findings, by name.
pub const OVS_CONDITION_ASKS_FINDINGS: c_int = 0;

/// The column `ask` of `asks`: how to find out.
pub const OVS_CONDITION_ASKS_ASK: c_int = 1;

/// The column `turns` of `asks`: the ways that they could turn, and to what.
pub const OVS_CONDITION_ASKS_TURNS: c_int = 2;

/// The column `taken` of `asks`: whether a word is taken until it is known, so that no verdict waits.
pub const OVS_CONDITION_ASKS_TAKEN: c_int = 3;

/// The result `stops`: the stops by name.
pub const OVS_CONDITION_STOPS: c_int = 9;

/// The column `rule` of `stops`: the rule by name.
pub const OVS_CONDITION_STOPS_RULE: c_int = 0;

/// The column `says` of `stops`: why, and what lifts it.
pub const OVS_CONDITION_STOPS_SAYS: c_int = 1;

/// The result `taken_findings`: what was not given and was taken.
pub const OVS_CONDITION_TAKEN_FINDINGS: c_int = 10;

/// The column `finding` of `taken_findings`: which finding.
pub const OVS_CONDITION_TAKEN_FINDINGS_FINDING: c_int = 0;

/// The column `word` of `taken_findings`: the word taken.
pub const OVS_CONDITION_TAKEN_FINDINGS_WORD: c_int = 1;

/// The column `why` of `taken_findings`: why.
pub const OVS_CONDITION_TAKEN_FINDINGS_WHY: c_int = 2;

/// The result `text`: the verdict in plain words, one idea to a line, what can hurt with it.
pub const OVS_CONDITION_TEXT: c_int = 11;

/// How many results there are.
pub const OVS_CONDITION_RESULTS: c_int = 12;

/// The word `unbonded`.
pub const OVS_CONDITION_TAKE_UNBONDED: c_int = 0;

/// The word `bonded`.
pub const OVS_CONDITION_TAKE_BONDED: c_int = 1;

/// The word `break_out_part`.
pub const OVS_CONDITION_TAKE_BREAK_OUT_PART: c_int = 2;

/// The word `break_out_whole`.
pub const OVS_CONDITION_TAKE_BREAK_OUT_WHOLE: c_int = 3;

/// The word `find_out`.
pub const OVS_CONDITION_TAKE_FIND_OUT: c_int = 4;

/// The word `stop`.
pub const OVS_CONDITION_TAKE_STOP: c_int = 5;

/// The word `allowed`.
pub const OVS_CONDITION_UNBONDED_ALLOWED: c_int = 0;

/// The word `allowed_after_work`.
pub const OVS_CONDITION_UNBONDED_ALLOWED_AFTER_WORK: c_int = 1;

/// The word `asks`.
pub const OVS_CONDITION_UNBONDED_ASKS: c_int = 2;

/// The word `refused`.
pub const OVS_CONDITION_UNBONDED_REFUSED: c_int = 3;

/// The word `stop`.
pub const OVS_CONDITION_UNBONDED_STOP: c_int = 4;

/// The word `allowed`.
pub const OVS_CONDITION_BONDED_ALLOWED: c_int = 0;

/// The word `allowed_after_work`.
pub const OVS_CONDITION_BONDED_ALLOWED_AFTER_WORK: c_int = 1;

/// The word `asks`.
pub const OVS_CONDITION_BONDED_ASKS: c_int = 2;

/// The word `refused`.
pub const OVS_CONDITION_BONDED_REFUSED: c_int = 3;

/// The word `stop`.
pub const OVS_CONDITION_BONDED_STOP: c_int = 4;

/// The word `allowed`.
pub const OVS_CONDITION_PARTLY_BONDED_ALLOWED: c_int = 0;

/// The word `allowed_after_work`.
pub const OVS_CONDITION_PARTLY_BONDED_ALLOWED_AFTER_WORK: c_int = 1;

/// The word `asks`.
pub const OVS_CONDITION_PARTLY_BONDED_ASKS: c_int = 2;

/// The word `refused`.
pub const OVS_CONDITION_PARTLY_BONDED_REFUSED: c_int = 3;

/// The word `stop`.
pub const OVS_CONDITION_PARTLY_BONDED_STOP: c_int = 4;

/// The word `allowed`.
pub const OVS_CONDITION_BREAK_OUT_PART_ALLOWED: c_int = 0;

/// The word `allowed_after_work`.
pub const OVS_CONDITION_BREAK_OUT_PART_ALLOWED_AFTER_WORK: c_int = 1;

/// The word `asks`.
pub const OVS_CONDITION_BREAK_OUT_PART_ASKS: c_int = 2;

/// The word `refused`.
pub const OVS_CONDITION_BREAK_OUT_PART_REFUSED: c_int = 3;

/// The word `stop`.
pub const OVS_CONDITION_BREAK_OUT_PART_STOP: c_int = 4;

/// The word `allowed`.
pub const OVS_CONDITION_BREAK_OUT_WHOLE_ALLOWED: c_int = 0;

/// The word `allowed_after_work`.
pub const OVS_CONDITION_BREAK_OUT_WHOLE_ALLOWED_AFTER_WORK: c_int = 1;

/// The word `asks`.
pub const OVS_CONDITION_BREAK_OUT_WHOLE_ASKS: c_int = 2;

/// The word `refused`.
pub const OVS_CONDITION_BREAK_OUT_WHOLE_REFUSED: c_int = 3;

/// The word `stop`.
pub const OVS_CONDITION_BREAK_OUT_WHOLE_STOP: c_int = 4;

/// The word `unbonded`.
pub const OVS_CONDITION_REASONS_WAY_UNBONDED: c_int = 0;

/// The word `bonded`.
pub const OVS_CONDITION_REASONS_WAY_BONDED: c_int = 1;

/// The word `partly_bonded`.
pub const OVS_CONDITION_REASONS_WAY_PARTLY_BONDED: c_int = 2;

/// The word `break_out_part`.
pub const OVS_CONDITION_REASONS_WAY_BREAK_OUT_PART: c_int = 3;

/// The word `break_out_whole`.
pub const OVS_CONDITION_REASONS_WAY_BREAK_OUT_WHOLE: c_int = 4;

/// The word `allowed`.
pub const OVS_CONDITION_REASONS_STANDING_ALLOWED: c_int = 0;

/// The word `allowed_after_work`.
pub const OVS_CONDITION_REASONS_STANDING_ALLOWED_AFTER_WORK: c_int = 1;

/// The word `asks`.
pub const OVS_CONDITION_REASONS_STANDING_ASKS: c_int = 2;

/// The word `refused`.
pub const OVS_CONDITION_REASONS_STANDING_REFUSED: c_int = 3;

/// The word `stop`.
pub const OVS_CONDITION_REASONS_STANDING_STOP: c_int = 4;

/// The word `unbonded`.
pub const OVS_CONDITION_WORK_WAY_UNBONDED: c_int = 0;

/// The word `bonded`.
pub const OVS_CONDITION_WORK_WAY_BONDED: c_int = 1;

/// The word `partly_bonded`.
pub const OVS_CONDITION_WORK_WAY_PARTLY_BONDED: c_int = 2;

/// The word `break_out_part`.
pub const OVS_CONDITION_WORK_WAY_BREAK_OUT_PART: c_int = 3;

/// The word `break_out_whole`.
pub const OVS_CONDITION_WORK_WAY_BREAK_OUT_WHOLE: c_int = 4;

/// The word `no`.
pub const OVS_CONDITION_ASKS_TAKEN_NO: c_int = 0;

/// The word `yes`.
pub const OVS_CONDITION_ASKS_TAKEN_YES: c_int = 1;

/// The result `take`: the way to take.
pub const OVS_CONDITION_QUICK_TAKE: c_int = 0;

/// The result `unbonded`: pouring over it, unbonded.
pub const OVS_CONDITION_QUICK_UNBONDED: c_int = 1;

/// The result `bonded`: bonding to it.
pub const OVS_CONDITION_QUICK_BONDED: c_int = 2;

/// The result `partly_bonded`: pouring straight on; only where that is asked for.
pub const OVS_CONDITION_QUICK_PARTLY_BONDED: c_int = 3;

/// The result `break_out_part`: breaking out the bad parts.
pub const OVS_CONDITION_QUICK_BREAK_OUT_PART: c_int = 4;

/// The result `break_out_whole`: breaking it all out.
pub const OVS_CONDITION_QUICK_BREAK_OUT_WHOLE: c_int = 5;

/// The result `reasons`: the rules that weigh, way by way.
pub const OVS_CONDITION_QUICK_REASONS: c_int = 6;

/// The column `way` of `reasons`: which way.
pub const OVS_CONDITION_QUICK_REASONS_WAY: c_int = 0;

/// The column `rule` of `reasons`: the rule by name.
pub const OVS_CONDITION_QUICK_REASONS_RULE: c_int = 1;

/// The column `findings` of `reasons`: the findings that it looks at; none where it belongs to the way in any case.
pub const OVS_CONDITION_QUICK_REASONS_FINDINGS: c_int = 2;

/// The column `standing` of `reasons`: where it alone would put the way.
pub const OVS_CONDITION_QUICK_REASONS_STANDING: c_int = 3;

/// The column `says` of `reasons`: the reason in plain words.
pub const OVS_CONDITION_QUICK_REASONS_SAYS: c_int = 4;

/// The column `follows` of `reasons`: the work that follows; for a refusal or a stop, what would lift it.
pub const OVS_CONDITION_QUICK_REASONS_FOLLOWS: c_int = 5;

/// The column `basis` of `reasons`: where the rule comes from.
pub const OVS_CONDITION_QUICK_REASONS_BASIS: c_int = 6;

/// The result `work`: the work that each way takes.
pub const OVS_CONDITION_QUICK_WORK: c_int = 7;

/// The column `way` of `work`: which way.
pub const OVS_CONDITION_QUICK_WORK_WAY: c_int = 0;

/// The column `what` of `work`: what is done.
pub const OVS_CONDITION_QUICK_WORK_WHAT: c_int = 1;

/// The result `asks`: what could turn the verdict and is not known.
pub const OVS_CONDITION_QUICK_ASKS: c_int = 8;

/// The column `findings` of `asks`: which findings, by name.
pub const OVS_CONDITION_QUICK_ASKS_FINDINGS: c_int = 0;

/// The column `ask` of `asks`: how to find out.
pub const OVS_CONDITION_QUICK_ASKS_ASK: c_int = 1;

/// The column `turns` of `asks`: the ways that they could turn, and to what.
pub const OVS_CONDITION_QUICK_ASKS_TURNS: c_int = 2;

/// The column `taken` of `asks`: whether a word is taken until it is known, so that no verdict waits.
pub const OVS_CONDITION_QUICK_ASKS_TAKEN: c_int = 3;

/// The result `stops`: the stops by name.
pub const OVS_CONDITION_QUICK_STOPS: c_int = 9;

/// The column `rule` of `stops`: the rule by name.
pub const OVS_CONDITION_QUICK_STOPS_RULE: c_int = 0;

/// The column `says` of `stops`: why, and what lifts it.
pub const OVS_CONDITION_QUICK_STOPS_SAYS: c_int = 1;

/// The result `taken_findings`: what was not given and was taken.
pub const OVS_CONDITION_QUICK_TAKEN_FINDINGS: c_int = 10;

/// The column `finding` of `taken_findings`: which finding.
pub const OVS_CONDITION_QUICK_TAKEN_FINDINGS_FINDING: c_int = 0;

/// The column `word` of `taken_findings`: the word taken.
pub const OVS_CONDITION_QUICK_TAKEN_FINDINGS_WORD: c_int = 1;

/// The column `why` of `taken_findings`: why.
pub const OVS_CONDITION_QUICK_TAKEN_FINDINGS_WHY: c_int = 2;

/// The result `text`: the verdict in plain words, one idea to a line, what can hurt with it.
pub const OVS_CONDITION_QUICK_TEXT: c_int = 11;

/// How many results there are.
pub const OVS_CONDITION_QUICK_RESULTS: c_int = 12;

/// The word `no`.
pub const OVS_CONDITION_QUICK_MOVES_NO: c_int = 0;

/// The word `sank_once`.
pub const OVS_CONDITION_QUICK_MOVES_SANK_ONCE: c_int = 1;

/// The word `rocks`.
pub const OVS_CONDITION_QUICK_MOVES_ROCKS: c_int = 2;

/// The word `moves`.
pub const OVS_CONDITION_QUICK_MOVES_MOVES: c_int = 3;

/// The word `none`.
pub const OVS_CONDITION_QUICK_CRACKS_NONE: c_int = 0;

/// The word `hairline_still`.
pub const OVS_CONDITION_QUICK_CRACKS_HAIRLINE_STILL: c_int = 1;

/// The word `wide_or_stepped`.
pub const OVS_CONDITION_QUICK_CRACKS_WIDE_OR_STEPPED: c_int = 2;

/// The word `many`.
pub const OVS_CONDITION_QUICK_CRACKS_MANY: c_int = 3;

/// The word `rings`.
pub const OVS_CONDITION_QUICK_HAMMER_RINGS: c_int = 0;

/// The word `spots`.
pub const OVS_CONDITION_QUICK_HAMMER_SPOTS: c_int = 1;

/// The word `a_lot`.
pub const OVS_CONDITION_QUICK_HAMMER_A_LOT: c_int = 2;

/// The word `clean`.
pub const OVS_CONDITION_QUICK_SURFACE_CLEAN: c_int = 0;

/// The word `oil_or_paint`.
pub const OVS_CONDITION_QUICK_SURFACE_OIL_OR_PAINT: c_int = 1;

/// The word `scaled`.
pub const OVS_CONDITION_QUICK_SURFACE_SCALED: c_int = 2;

/// The word `covered`.
pub const OVS_CONDITION_QUICK_SURFACE_COVERED: c_int = 3;

/// The word `ground_indoors`.
pub const OVS_CONDITION_QUICK_UNDER_GROUND_INDOORS: c_int = 0;

/// The word `ground_outdoors`.
pub const OVS_CONDITION_QUICK_UNDER_GROUND_OUTDOORS: c_int = 1;

/// The word `ground_frost`.
pub const OVS_CONDITION_QUICK_UNDER_GROUND_FROST: c_int = 2;

/// The word `air`.
pub const OVS_CONDITION_QUICK_UNDER_AIR: c_int = 3;

/// The word `unknown`.
pub const OVS_CONDITION_QUICK_UNDER_UNKNOWN: c_int = 4;

/// The word `unbonded`.
pub const OVS_CONDITION_QUICK_TAKE_UNBONDED: c_int = 0;

/// The word `bonded`.
pub const OVS_CONDITION_QUICK_TAKE_BONDED: c_int = 1;

/// The word `break_out_part`.
pub const OVS_CONDITION_QUICK_TAKE_BREAK_OUT_PART: c_int = 2;

/// The word `break_out_whole`.
pub const OVS_CONDITION_QUICK_TAKE_BREAK_OUT_WHOLE: c_int = 3;

/// The word `find_out`.
pub const OVS_CONDITION_QUICK_TAKE_FIND_OUT: c_int = 4;

/// The word `stop`.
pub const OVS_CONDITION_QUICK_TAKE_STOP: c_int = 5;

/// The word `allowed`.
pub const OVS_CONDITION_QUICK_UNBONDED_ALLOWED: c_int = 0;

/// The word `allowed_after_work`.
pub const OVS_CONDITION_QUICK_UNBONDED_ALLOWED_AFTER_WORK: c_int = 1;

/// The word `asks`.
pub const OVS_CONDITION_QUICK_UNBONDED_ASKS: c_int = 2;

/// The word `refused`.
pub const OVS_CONDITION_QUICK_UNBONDED_REFUSED: c_int = 3;

/// The word `stop`.
pub const OVS_CONDITION_QUICK_UNBONDED_STOP: c_int = 4;

/// The word `allowed`.
pub const OVS_CONDITION_QUICK_BONDED_ALLOWED: c_int = 0;

/// The word `allowed_after_work`.
pub const OVS_CONDITION_QUICK_BONDED_ALLOWED_AFTER_WORK: c_int = 1;

/// The word `asks`.
pub const OVS_CONDITION_QUICK_BONDED_ASKS: c_int = 2;

/// The word `refused`.
pub const OVS_CONDITION_QUICK_BONDED_REFUSED: c_int = 3;

/// The word `stop`.
pub const OVS_CONDITION_QUICK_BONDED_STOP: c_int = 4;

/// The word `allowed`.
pub const OVS_CONDITION_QUICK_PARTLY_BONDED_ALLOWED: c_int = 0;

/// The word `allowed_after_work`.
pub const OVS_CONDITION_QUICK_PARTLY_BONDED_ALLOWED_AFTER_WORK: c_int = 1;

/// The word `asks`.
pub const OVS_CONDITION_QUICK_PARTLY_BONDED_ASKS: c_int = 2;

/// The word `refused`.
pub const OVS_CONDITION_QUICK_PARTLY_BONDED_REFUSED: c_int = 3;

/// The word `stop`.
pub const OVS_CONDITION_QUICK_PARTLY_BONDED_STOP: c_int = 4;

/// The word `allowed`.
pub const OVS_CONDITION_QUICK_BREAK_OUT_PART_ALLOWED: c_int = 0;

/// The word `allowed_after_work`.
pub const OVS_CONDITION_QUICK_BREAK_OUT_PART_ALLOWED_AFTER_WORK: c_int = 1;

/// The word `asks`.
pub const OVS_CONDITION_QUICK_BREAK_OUT_PART_ASKS: c_int = 2;

/// The word `refused`.
pub const OVS_CONDITION_QUICK_BREAK_OUT_PART_REFUSED: c_int = 3;

/// The word `stop`.
pub const OVS_CONDITION_QUICK_BREAK_OUT_PART_STOP: c_int = 4;

/// The word `allowed`.
pub const OVS_CONDITION_QUICK_BREAK_OUT_WHOLE_ALLOWED: c_int = 0;

/// The word `allowed_after_work`.
pub const OVS_CONDITION_QUICK_BREAK_OUT_WHOLE_ALLOWED_AFTER_WORK: c_int = 1;

/// The word `asks`.
pub const OVS_CONDITION_QUICK_BREAK_OUT_WHOLE_ASKS: c_int = 2;

/// The word `refused`.
pub const OVS_CONDITION_QUICK_BREAK_OUT_WHOLE_REFUSED: c_int = 3;

/// The word `stop`.
pub const OVS_CONDITION_QUICK_BREAK_OUT_WHOLE_STOP: c_int = 4;

/// The word `unbonded`.
pub const OVS_CONDITION_QUICK_REASONS_WAY_UNBONDED: c_int = 0;

/// The word `bonded`.
pub const OVS_CONDITION_QUICK_REASONS_WAY_BONDED: c_int = 1;

/// The word `partly_bonded`.
pub const OVS_CONDITION_QUICK_REASONS_WAY_PARTLY_BONDED: c_int = 2;

/// The word `break_out_part`.
pub const OVS_CONDITION_QUICK_REASONS_WAY_BREAK_OUT_PART: c_int = 3;

/// The word `break_out_whole`.
pub const OVS_CONDITION_QUICK_REASONS_WAY_BREAK_OUT_WHOLE: c_int = 4;

/// The word `allowed`.
pub const OVS_CONDITION_QUICK_REASONS_STANDING_ALLOWED: c_int = 0;

/// The word `allowed_after_work`.
pub const OVS_CONDITION_QUICK_REASONS_STANDING_ALLOWED_AFTER_WORK: c_int = 1;

/// The word `asks`.
pub const OVS_CONDITION_QUICK_REASONS_STANDING_ASKS: c_int = 2;

/// The word `refused`.
pub const OVS_CONDITION_QUICK_REASONS_STANDING_REFUSED: c_int = 3;

/// The word `stop`.
pub const OVS_CONDITION_QUICK_REASONS_STANDING_STOP: c_int = 4;

/// The word `unbonded`.
pub const OVS_CONDITION_QUICK_WORK_WAY_UNBONDED: c_int = 0;

/// The word `bonded`.
pub const OVS_CONDITION_QUICK_WORK_WAY_BONDED: c_int = 1;

/// The word `partly_bonded`.
pub const OVS_CONDITION_QUICK_WORK_WAY_PARTLY_BONDED: c_int = 2;

/// The word `break_out_part`.
pub const OVS_CONDITION_QUICK_WORK_WAY_BREAK_OUT_PART: c_int = 3;

/// The word `break_out_whole`.
pub const OVS_CONDITION_QUICK_WORK_WAY_BREAK_OUT_WHOLE: c_int = 4;

/// The word `no`.
pub const OVS_CONDITION_QUICK_ASKS_TAKEN_NO: c_int = 0;

/// The word `yes`.
pub const OVS_CONDITION_QUICK_ASKS_TAKEN_YES: c_int = 1;

/// The result `in_place` (yd3 or m3): old concrete in place.
pub const OVS_TEAR_OUT_IN_PLACE: c_int = 0;

/// The result `mass` (ton or t): its mass.
pub const OVS_TEAR_OUT_MASS: c_int = 1;

/// The result `loose` (yd3 or m3): its volume broken up.
pub const OVS_TEAR_OUT_LOOSE: c_int = 2;

/// The result `loads`: loads to the dump, by weight or by volume.
pub const OVS_TEAR_OUT_LOADS: c_int = 3;

/// The result `dig_depth` (in or mm): how deep the ground is dug below the old slab.
pub const OVS_TEAR_OUT_DIG_DEPTH: c_int = 4;

/// The result `dig` (yd3 or m3): ground dug, in place; it is not in the loads.
pub const OVS_TEAR_OUT_DIG: c_int = 5;

/// The result `base_in_place` (yd3 or m3): new base, compacted.
pub const OVS_TEAR_OUT_BASE_IN_PLACE: c_int = 6;

/// The result `base_bought` (yd3 or m3): new base, loose, as it is bought.
pub const OVS_TEAR_OUT_BASE_BOUGHT: c_int = 7;

/// The result `concrete` (yd3 or m3): the new slab; none where nothing is poured.
pub const OVS_TEAR_OUT_CONCRETE: c_int = 8;

/// The result `costs`: the cost of each part that there is.
pub const OVS_TEAR_OUT_COSTS: c_int = 9;

/// The column `what` of `costs`: what for.
pub const OVS_TEAR_OUT_COSTS_WHAT: c_int = 0;

/// The column `money` of `costs` (money): how much; none where its price is missing.
pub const OVS_TEAR_OUT_COSTS_MONEY: c_int = 1;

/// The result `total` (money): all of it; none where a price is missing.
pub const OVS_TEAR_OUT_TOTAL: c_int = 10;

/// How many results there are.
pub const OVS_TEAR_OUT_RESULTS: c_int = 11;

static CONDITION: &Operation = row(OPERATIONS, "condition");

/// Whether the old slab may stay: every way judged with its reasons, the way to take, the work, and what to find
/// out.
///
/// Equation: each rule: where its findings are at their word or worse, the way is at least where the rule puts it;
/// bad parts broken out leave the better of unbonded and bonded for the rest.
/// Taken for granted: what is not given is not bad, and asked for where it could turn the verdict; no verdict is an
/// approval.
///
/// - `findings`: what was found, in site words or measures.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_CONDITION_TAKE: the way to take; 0 unbonded, 1 bonded, 2 break_out_part, 3 break_out_whole, 4 find_out,
///     5 stop.
///   - OVS_CONDITION_UNBONDED: pouring over it, unbonded; 0 allowed, 1 allowed_after_work, 2 asks, 3 refused, 4
///     stop.
///   - OVS_CONDITION_BONDED: bonding to it; 0 allowed, 1 allowed_after_work, 2 asks, 3 refused, 4 stop.
///   - OVS_CONDITION_PARTLY_BONDED: pouring straight on; only where that is asked for; 0 allowed, 1
///     allowed_after_work, 2 asks, 3 refused, 4 stop.
///   - OVS_CONDITION_BREAK_OUT_PART: breaking out the bad parts; 0 allowed, 1 allowed_after_work, 2 asks, 3
///     refused, 4 stop.
///   - OVS_CONDITION_BREAK_OUT_WHOLE: breaking it all out; 0 allowed, 1 allowed_after_work, 2 asks, 3 refused, 4
///     stop.
///   - OVS_CONDITION_REASONS: the rules that weigh, way by way.
///   - OVS_CONDITION_WORK: the work that each way takes.
///   - OVS_CONDITION_ASKS: what could turn the verdict and is not known.
///   - OVS_CONDITION_STOPS: the stops by name.
///   - OVS_CONDITION_TAKEN_FINDINGS: what was not given and was taken.
///   - OVS_CONDITION_TEXT: the verdict in plain words, one idea to a line, what can hurt with it.
///
/// Refuses with OVS_UNIT_MISSING, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_KEY_UNKNOWN, OVS_CONTRADICTION,
/// OVS_NULL_POINTER, OVS_FINDINGS_DISAGREE.
/// Basis: a sound slab is poured over at 3 in and more, bonded to below that; broken, settling and heaving slabs
/// come out: common practice, no source.
/// Basis: hairline, card, coin: cracks of 0.01, 0.03, 0.06 in; coin, pencil: steps of 1/16, 1/4 in; hollow spots, a
/// lot: 5, 25 %; a nominal 4 in is 3 1/2 in: common practice, no source.
/// Basis: tight, still cracks over a slab that sounds whole: bond or pour over; stepped, rocking, pumping or
/// broken: do not bond: ACI 302.1R and ACI 325.13R (several), choice of overlay by the old slab's condition, from
/// memory: confirm.
/// Basis: over random cracks and settled offsets: not bonded; unbonded over a compacted sand layer that covers the
/// high spots: Concrete Construction, answer on topping a cracked and settled slab (citing ACI 302.1R-80), choice
/// of topping.
/// Basis: before bonding, moving cracks are stabilised, filled or stitched, and contamination is taken off down to
/// clean concrete: Concrete Construction, preparing for a topping (any), moving cracks; contamination.
/// Basis: a floor topping that bonds in part counts as a failure: old cracks will show: Concrete Construction, on
/// floor toppings (any), partly bonded toppings.
/// Basis: unbonded: sheet, felt, waterproof paper or wax cure over a base patched to a fair plane; bonded: about
/// 1/4 in rough: American Society of Concrete Contractors, answer on toppings (any), bond breakers; roughness.
/// Basis: milled or shotblasted, then blasted clean; grout just ahead of the concrete, dried grout taken off: UFC
/// 3-260-02 (any), chapter 17, fully bonded overlays.
/// Basis: a hammer or a chain tells hollow places: ASTM D4580 (any), sounding of delaminations, from memory:
/// confirm.
/// Basis: an agent that wets again is for dry places indoors only: ASTM C1059 (any), type I, which wets again, and
/// type II, from memory: confirm.
/// Basis: a bonded topping is at least 3/4 in thick: ACI 302.1R (any), bonded toppings, from memory: confirm.
/// Basis: settlement that nobody knows counts as live where its signs are fresh or a step is over 1/2 in; else a
/// second reading or an exclusion in writing: common practice, no source.
/// Basis: what lies under a slab is known, by drilling if need be, before it is loaded: common practice, no source.
/// Basis: a slab that spans takes more weight only by an engineer's figures: common practice, no source.
/// Basis: water between two slabs freezes and lifts the upper one: outdoors bonded, or 4 in and more on a drained
/// layer with an open lower edge and sealed joints: common practice, no source.
/// Basis: pipes, wires and tendons are found and marked before an old slab is cut, drilled or broken: common
/// practice, no source.
/// Basis: posts of lifts and hoists are not anchored in a topping; the maker and an engineer say what carries them:
/// common practice, no source.
/// Basis: coverings and paint of unknown age are tested for asbestos and lead first: common practice, no source.
/// Basis: 3 in unbonded carries feet and cars; trucks, wash bays and jacks want 4 in and more, by stress: common
/// practice, no source.
/// Basis: a panel is bonded or not as a whole; a change lies on a full-depth joint, at best over an old one: common
/// practice, no source.
/// Basis: what the prepared surface must hold in a pull-off test: the project's specification.
/// Since 0.1.0.
/// Example, as JSON: {"findings":{"measured_crack":"0.02 in","measured_thickness":"4 in","crack_movement":"still","crack_pattern":"few","step":"none","settlement":"none","heave":"none","rocking":"none","joints":"still","hollow":"none","strength":"rings","contamination":"film","moisture":"dry","rests_on":"gravel","below":"nothing","place":"indoors","load":"car"}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_condition_us(
    findings: *const ovs_findings,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Record(Passed::new("findings", findings))),
    ];
    let request = Request::new(CONDITION, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Whether the old slab may stay: every way judged with its reasons, the way to take, the work, and what to find
/// out.
///
/// Equation: each rule: where its findings are at their word or worse, the way is at least where the rule puts it;
/// bad parts broken out leave the better of unbonded and bonded for the rest.
/// Taken for granted: what is not given is not bad, and asked for where it could turn the verdict; no verdict is an
/// approval.
///
/// - `findings`: what was found, in site words or measures.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_CONDITION_TAKE: the way to take; 0 unbonded, 1 bonded, 2 break_out_part, 3 break_out_whole, 4 find_out,
///     5 stop.
///   - OVS_CONDITION_UNBONDED: pouring over it, unbonded; 0 allowed, 1 allowed_after_work, 2 asks, 3 refused, 4
///     stop.
///   - OVS_CONDITION_BONDED: bonding to it; 0 allowed, 1 allowed_after_work, 2 asks, 3 refused, 4 stop.
///   - OVS_CONDITION_PARTLY_BONDED: pouring straight on; only where that is asked for; 0 allowed, 1
///     allowed_after_work, 2 asks, 3 refused, 4 stop.
///   - OVS_CONDITION_BREAK_OUT_PART: breaking out the bad parts; 0 allowed, 1 allowed_after_work, 2 asks, 3
///     refused, 4 stop.
///   - OVS_CONDITION_BREAK_OUT_WHOLE: breaking it all out; 0 allowed, 1 allowed_after_work, 2 asks, 3 refused, 4
///     stop.
///   - OVS_CONDITION_REASONS: the rules that weigh, way by way.
///   - OVS_CONDITION_WORK: the work that each way takes.
///   - OVS_CONDITION_ASKS: what could turn the verdict and is not known.
///   - OVS_CONDITION_STOPS: the stops by name.
///   - OVS_CONDITION_TAKEN_FINDINGS: what was not given and was taken.
///   - OVS_CONDITION_TEXT: the verdict in plain words, one idea to a line, what can hurt with it.
///
/// Refuses with OVS_UNIT_MISSING, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_KEY_UNKNOWN, OVS_CONTRADICTION,
/// OVS_NULL_POINTER, OVS_FINDINGS_DISAGREE.
/// Basis: a sound slab is poured over at 3 in and more, bonded to below that; broken, settling and heaving slabs
/// come out: common practice, no source.
/// Basis: hairline, card, coin: cracks of 0.01, 0.03, 0.06 in; coin, pencil: steps of 1/16, 1/4 in; hollow spots, a
/// lot: 5, 25 %; a nominal 4 in is 3 1/2 in: common practice, no source.
/// Basis: tight, still cracks over a slab that sounds whole: bond or pour over; stepped, rocking, pumping or
/// broken: do not bond: ACI 302.1R and ACI 325.13R (several), choice of overlay by the old slab's condition, from
/// memory: confirm.
/// Basis: over random cracks and settled offsets: not bonded; unbonded over a compacted sand layer that covers the
/// high spots: Concrete Construction, answer on topping a cracked and settled slab (citing ACI 302.1R-80), choice
/// of topping.
/// Basis: before bonding, moving cracks are stabilised, filled or stitched, and contamination is taken off down to
/// clean concrete: Concrete Construction, preparing for a topping (any), moving cracks; contamination.
/// Basis: a floor topping that bonds in part counts as a failure: old cracks will show: Concrete Construction, on
/// floor toppings (any), partly bonded toppings.
/// Basis: unbonded: sheet, felt, waterproof paper or wax cure over a base patched to a fair plane; bonded: about
/// 1/4 in rough: American Society of Concrete Contractors, answer on toppings (any), bond breakers; roughness.
/// Basis: milled or shotblasted, then blasted clean; grout just ahead of the concrete, dried grout taken off: UFC
/// 3-260-02 (any), chapter 17, fully bonded overlays.
/// Basis: a hammer or a chain tells hollow places: ASTM D4580 (any), sounding of delaminations, from memory:
/// confirm.
/// Basis: an agent that wets again is for dry places indoors only: ASTM C1059 (any), type I, which wets again, and
/// type II, from memory: confirm.
/// Basis: a bonded topping is at least 3/4 in thick: ACI 302.1R (any), bonded toppings, from memory: confirm.
/// Basis: settlement that nobody knows counts as live where its signs are fresh or a step is over 1/2 in; else a
/// second reading or an exclusion in writing: common practice, no source.
/// Basis: what lies under a slab is known, by drilling if need be, before it is loaded: common practice, no source.
/// Basis: a slab that spans takes more weight only by an engineer's figures: common practice, no source.
/// Basis: water between two slabs freezes and lifts the upper one: outdoors bonded, or 4 in and more on a drained
/// layer with an open lower edge and sealed joints: common practice, no source.
/// Basis: pipes, wires and tendons are found and marked before an old slab is cut, drilled or broken: common
/// practice, no source.
/// Basis: posts of lifts and hoists are not anchored in a topping; the maker and an engineer say what carries them:
/// common practice, no source.
/// Basis: coverings and paint of unknown age are tested for asbestos and lead first: common practice, no source.
/// Basis: 3 in unbonded carries feet and cars; trucks, wash bays and jacks want 4 in and more, by stress: common
/// practice, no source.
/// Basis: a panel is bonded or not as a whole; a change lies on a full-depth joint, at best over an old one: common
/// practice, no source.
/// Basis: what the prepared surface must hold in a pull-off test: the project's specification.
/// Since 0.1.0.
/// Example, as JSON: {"findings":{"measured_crack":"0.02 in","measured_thickness":"4 in","crack_movement":"still","crack_pattern":"few","step":"none","settlement":"none","heave":"none","rocking":"none","joints":"still","hollow":"none","strength":"rings","contamination":"film","moisture":"dry","rests_on":"gravel","below":"nothing","place":"indoors","load":"car"}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_condition_si(
    findings: *const ovs_findings,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Record(Passed::new("findings", findings))),
    ];
    let request = Request::new(CONDITION, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_condition_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_condition_us_why(
    findings: *const ovs_findings,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("findings", findings))),
    ];
    let request = Request::new(CONDITION, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_condition_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_condition_si_why(
    findings: *const ovs_findings,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("findings", findings))),
    ];
    let request = Request::new(CONDITION, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static CONDITION_QUICK: &Operation = row(OPERATIONS, "condition_quick");

/// The verdict on the old slab by five questions that a foreman answers standing on it.
///
/// Equation: each rule: where its findings are at their word or worse, the way is at least where the rule puts it;
/// bad parts broken out leave the better of unbonded and bonded for the rest.
/// Taken for granted: each answer stands for findings, the worse ones where it may mean several; each is listed as
/// taken.
///
/// - `moves`: does it move or rock, or has it sunk?; 0 no, 1 sank_once, 2 rocks, 3 moves.
/// - `cracks`: what cracks are there?; 0 none, 1 hairline_still, 2 wide_or_stepped, 3 many.
/// - `hammer`: what does the hammer say?; 0 rings, 1 spots, 2 a_lot.
/// - `surface`: what is the surface like?; 0 clean, 1 oil_or_paint, 2 scaled, 3 covered.
/// - `under`: what is under it, and does it freeze there?; 0 ground_indoors, 1 ground_outdoors, 2 ground_frost, 3
///   air, 4 unknown.
/// - `findings`: what else was found; it goes before the answers; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `findings`: what else was found; it goes before the answers; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_CONDITION_QUICK_TAKE: the way to take; 0 unbonded, 1 bonded, 2 break_out_part, 3 break_out_whole, 4
///     find_out, 5 stop.
///   - OVS_CONDITION_QUICK_UNBONDED: pouring over it, unbonded; 0 allowed, 1 allowed_after_work, 2 asks, 3 refused,
///     4 stop.
///   - OVS_CONDITION_QUICK_BONDED: bonding to it; 0 allowed, 1 allowed_after_work, 2 asks, 3 refused, 4 stop.
///   - OVS_CONDITION_QUICK_PARTLY_BONDED: pouring straight on; only where that is asked for; 0 allowed, 1
///     allowed_after_work, 2 asks, 3 refused, 4 stop.
///   - OVS_CONDITION_QUICK_BREAK_OUT_PART: breaking out the bad parts; 0 allowed, 1 allowed_after_work, 2 asks, 3
///     refused, 4 stop.
///   - OVS_CONDITION_QUICK_BREAK_OUT_WHOLE: breaking it all out; 0 allowed, 1 allowed_after_work, 2 asks, 3
///     refused, 4 stop.
///   - OVS_CONDITION_QUICK_REASONS: the rules that weigh, way by way.
///   - OVS_CONDITION_QUICK_WORK: the work that each way takes.
///   - OVS_CONDITION_QUICK_ASKS: what could turn the verdict and is not known.
///   - OVS_CONDITION_QUICK_STOPS: the stops by name.
///   - OVS_CONDITION_QUICK_TAKEN_FINDINGS: what was not given and was taken.
///   - OVS_CONDITION_QUICK_TEXT: the verdict in plain words, one idea to a line, what can hurt with it.
///
/// Refuses with OVS_WORD_UNKNOWN, OVS_CONTRADICTION, OVS_NULL_POINTER, OVS_FINDINGS_DISAGREE.
/// Basis: a sound slab is poured over at 3 in and more, bonded to below that; broken, settling and heaving slabs
/// come out: common practice, no source.
/// Basis: hairline, card, coin: cracks of 0.01, 0.03, 0.06 in; coin, pencil: steps of 1/16, 1/4 in; hollow spots, a
/// lot: 5, 25 %; a nominal 4 in is 3 1/2 in: common practice, no source.
/// Basis: tight, still cracks over a slab that sounds whole: bond or pour over; stepped, rocking, pumping or
/// broken: do not bond: ACI 302.1R and ACI 325.13R (several), choice of overlay by the old slab's condition, from
/// memory: confirm.
/// Basis: over random cracks and settled offsets: not bonded; unbonded over a compacted sand layer that covers the
/// high spots: Concrete Construction, answer on topping a cracked and settled slab (citing ACI 302.1R-80), choice
/// of topping.
/// Basis: before bonding, moving cracks are stabilised, filled or stitched, and contamination is taken off down to
/// clean concrete: Concrete Construction, preparing for a topping (any), moving cracks; contamination.
/// Basis: a floor topping that bonds in part counts as a failure: old cracks will show: Concrete Construction, on
/// floor toppings (any), partly bonded toppings.
/// Basis: unbonded: sheet, felt, waterproof paper or wax cure over a base patched to a fair plane; bonded: about
/// 1/4 in rough: American Society of Concrete Contractors, answer on toppings (any), bond breakers; roughness.
/// Basis: milled or shotblasted, then blasted clean; grout just ahead of the concrete, dried grout taken off: UFC
/// 3-260-02 (any), chapter 17, fully bonded overlays.
/// Basis: a hammer or a chain tells hollow places: ASTM D4580 (any), sounding of delaminations, from memory:
/// confirm.
/// Basis: an agent that wets again is for dry places indoors only: ASTM C1059 (any), type I, which wets again, and
/// type II, from memory: confirm.
/// Basis: a bonded topping is at least 3/4 in thick: ACI 302.1R (any), bonded toppings, from memory: confirm.
/// Basis: settlement that nobody knows counts as live where its signs are fresh or a step is over 1/2 in; else a
/// second reading or an exclusion in writing: common practice, no source.
/// Basis: what lies under a slab is known, by drilling if need be, before it is loaded: common practice, no source.
/// Basis: a slab that spans takes more weight only by an engineer's figures: common practice, no source.
/// Basis: water between two slabs freezes and lifts the upper one: outdoors bonded, or 4 in and more on a drained
/// layer with an open lower edge and sealed joints: common practice, no source.
/// Basis: pipes, wires and tendons are found and marked before an old slab is cut, drilled or broken: common
/// practice, no source.
/// Basis: posts of lifts and hoists are not anchored in a topping; the maker and an engineer say what carries them:
/// common practice, no source.
/// Basis: coverings and paint of unknown age are tested for asbestos and lead first: common practice, no source.
/// Basis: 3 in unbonded carries feet and cars; trucks, wash bays and jacks want 4 in and more, by stress: common
/// practice, no source.
/// Basis: a panel is bonded or not as a whole; a change lies on a full-depth joint, at best over an old one: common
/// practice, no source.
/// Basis: what the prepared surface must hold in a pull-off test: the project's specification.
/// Since 0.1.0.
/// Example, as JSON: {"moves":"no","cracks":"hairline_still","hammer":"rings","surface":"clean","under":"ground_indoors"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_condition_quick_us(
    moves: c_int,
    cracks: c_int,
    hammer: c_int,
    surface: c_int,
    under: c_int,
    findings: *const ovs_findings,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Whole(moves)),
        (1, Given::Whole(cracks)),
        (2, Given::Whole(hammer)),
        (3, Given::Whole(surface)),
        (4, Given::Whole(under)),
        (5, Given::Record(Passed::new("findings", findings))),
    ];
    let request = Request::new(CONDITION_QUICK, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The verdict on the old slab by five questions that a foreman answers standing on it.
///
/// Equation: each rule: where its findings are at their word or worse, the way is at least where the rule puts it;
/// bad parts broken out leave the better of unbonded and bonded for the rest.
/// Taken for granted: each answer stands for findings, the worse ones where it may mean several; each is listed as
/// taken.
///
/// - `moves`: does it move or rock, or has it sunk?; 0 no, 1 sank_once, 2 rocks, 3 moves.
/// - `cracks`: what cracks are there?; 0 none, 1 hairline_still, 2 wide_or_stepped, 3 many.
/// - `hammer`: what does the hammer say?; 0 rings, 1 spots, 2 a_lot.
/// - `surface`: what is the surface like?; 0 clean, 1 oil_or_paint, 2 scaled, 3 covered.
/// - `under`: what is under it, and does it freeze there?; 0 ground_indoors, 1 ground_outdoors, 2 ground_frost, 3
///   air, 4 unknown.
/// - `findings`: what else was found; it goes before the answers; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `findings`: what else was found; it goes before the answers; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_CONDITION_QUICK_TAKE: the way to take; 0 unbonded, 1 bonded, 2 break_out_part, 3 break_out_whole, 4
///     find_out, 5 stop.
///   - OVS_CONDITION_QUICK_UNBONDED: pouring over it, unbonded; 0 allowed, 1 allowed_after_work, 2 asks, 3 refused,
///     4 stop.
///   - OVS_CONDITION_QUICK_BONDED: bonding to it; 0 allowed, 1 allowed_after_work, 2 asks, 3 refused, 4 stop.
///   - OVS_CONDITION_QUICK_PARTLY_BONDED: pouring straight on; only where that is asked for; 0 allowed, 1
///     allowed_after_work, 2 asks, 3 refused, 4 stop.
///   - OVS_CONDITION_QUICK_BREAK_OUT_PART: breaking out the bad parts; 0 allowed, 1 allowed_after_work, 2 asks, 3
///     refused, 4 stop.
///   - OVS_CONDITION_QUICK_BREAK_OUT_WHOLE: breaking it all out; 0 allowed, 1 allowed_after_work, 2 asks, 3
///     refused, 4 stop.
///   - OVS_CONDITION_QUICK_REASONS: the rules that weigh, way by way.
///   - OVS_CONDITION_QUICK_WORK: the work that each way takes.
///   - OVS_CONDITION_QUICK_ASKS: what could turn the verdict and is not known.
///   - OVS_CONDITION_QUICK_STOPS: the stops by name.
///   - OVS_CONDITION_QUICK_TAKEN_FINDINGS: what was not given and was taken.
///   - OVS_CONDITION_QUICK_TEXT: the verdict in plain words, one idea to a line, what can hurt with it.
///
/// Refuses with OVS_WORD_UNKNOWN, OVS_CONTRADICTION, OVS_NULL_POINTER, OVS_FINDINGS_DISAGREE.
/// Basis: a sound slab is poured over at 3 in and more, bonded to below that; broken, settling and heaving slabs
/// come out: common practice, no source.
/// Basis: hairline, card, coin: cracks of 0.01, 0.03, 0.06 in; coin, pencil: steps of 1/16, 1/4 in; hollow spots, a
/// lot: 5, 25 %; a nominal 4 in is 3 1/2 in: common practice, no source.
/// Basis: tight, still cracks over a slab that sounds whole: bond or pour over; stepped, rocking, pumping or
/// broken: do not bond: ACI 302.1R and ACI 325.13R (several), choice of overlay by the old slab's condition, from
/// memory: confirm.
/// Basis: over random cracks and settled offsets: not bonded; unbonded over a compacted sand layer that covers the
/// high spots: Concrete Construction, answer on topping a cracked and settled slab (citing ACI 302.1R-80), choice
/// of topping.
/// Basis: before bonding, moving cracks are stabilised, filled or stitched, and contamination is taken off down to
/// clean concrete: Concrete Construction, preparing for a topping (any), moving cracks; contamination.
/// Basis: a floor topping that bonds in part counts as a failure: old cracks will show: Concrete Construction, on
/// floor toppings (any), partly bonded toppings.
/// Basis: unbonded: sheet, felt, waterproof paper or wax cure over a base patched to a fair plane; bonded: about
/// 1/4 in rough: American Society of Concrete Contractors, answer on toppings (any), bond breakers; roughness.
/// Basis: milled or shotblasted, then blasted clean; grout just ahead of the concrete, dried grout taken off: UFC
/// 3-260-02 (any), chapter 17, fully bonded overlays.
/// Basis: a hammer or a chain tells hollow places: ASTM D4580 (any), sounding of delaminations, from memory:
/// confirm.
/// Basis: an agent that wets again is for dry places indoors only: ASTM C1059 (any), type I, which wets again, and
/// type II, from memory: confirm.
/// Basis: a bonded topping is at least 3/4 in thick: ACI 302.1R (any), bonded toppings, from memory: confirm.
/// Basis: settlement that nobody knows counts as live where its signs are fresh or a step is over 1/2 in; else a
/// second reading or an exclusion in writing: common practice, no source.
/// Basis: what lies under a slab is known, by drilling if need be, before it is loaded: common practice, no source.
/// Basis: a slab that spans takes more weight only by an engineer's figures: common practice, no source.
/// Basis: water between two slabs freezes and lifts the upper one: outdoors bonded, or 4 in and more on a drained
/// layer with an open lower edge and sealed joints: common practice, no source.
/// Basis: pipes, wires and tendons are found and marked before an old slab is cut, drilled or broken: common
/// practice, no source.
/// Basis: posts of lifts and hoists are not anchored in a topping; the maker and an engineer say what carries them:
/// common practice, no source.
/// Basis: coverings and paint of unknown age are tested for asbestos and lead first: common practice, no source.
/// Basis: 3 in unbonded carries feet and cars; trucks, wash bays and jacks want 4 in and more, by stress: common
/// practice, no source.
/// Basis: a panel is bonded or not as a whole; a change lies on a full-depth joint, at best over an old one: common
/// practice, no source.
/// Basis: what the prepared surface must hold in a pull-off test: the project's specification.
/// Since 0.1.0.
/// Example, as JSON: {"moves":"no","cracks":"hairline_still","hammer":"rings","surface":"clean","under":"ground_indoors"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_condition_quick_si(
    moves: c_int,
    cracks: c_int,
    hammer: c_int,
    surface: c_int,
    under: c_int,
    findings: *const ovs_findings,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Whole(moves)),
        (1, Given::Whole(cracks)),
        (2, Given::Whole(hammer)),
        (3, Given::Whole(surface)),
        (4, Given::Whole(under)),
        (5, Given::Record(Passed::new("findings", findings))),
    ];
    let request = Request::new(CONDITION_QUICK, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_condition_quick_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_condition_quick_us_why(
    moves: c_int,
    cracks: c_int,
    hammer: c_int,
    surface: c_int,
    under: c_int,
    findings: *const ovs_findings,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Whole(moves)),
        (1, Given::Whole(cracks)),
        (2, Given::Whole(hammer)),
        (3, Given::Whole(surface)),
        (4, Given::Whole(under)),
        (5, Given::Record(Passed::new("findings", findings))),
    ];
    let request = Request::new(CONDITION_QUICK, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_condition_quick_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_condition_quick_si_why(
    moves: c_int,
    cracks: c_int,
    hammer: c_int,
    surface: c_int,
    under: c_int,
    findings: *const ovs_findings,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Whole(moves)),
        (1, Given::Whole(cracks)),
        (2, Given::Whole(hammer)),
        (3, Given::Whole(surface)),
        (4, Given::Whole(under)),
        (5, Given::Record(Passed::new("findings", findings))),
    ];
    let request = Request::new(CONDITION_QUICK, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static TEAR_OUT: &Operation = row(OPERATIONS, "tear_out");

/// Breaking an old slab out: what is hauled away in how many loads, the new base, the new slab, the cost at the
/// caller's prices.
///
/// Equation: in place = area x old thickness; weight = in place x density; loose = in place x bulking; dug = base +
/// new thickness - old thickness - rise where above none; concrete = area x new thickness.
/// Taken for granted: thicknesses and rise are means over the area; a missing price stays missing and leaves no
/// total.
///
/// - `area_ft2` (ft2): area broken out; more than 0 ft2, at most 10763910.4167 ft2.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `old_thickness` (in): thickness of the old slab; at least 0.25 in, at most 60 in; where left out 3 1/2 in,
///     because a nominal 4 in is 3 1/2 in.
///   - `density` (lb/ft3): mass of the old concrete in place; at least 62.4279605761 lb/ft3, at most 249.711842305
///     lb/ft3; where left out 150 lb/ft3, because 4,050 lb/yd3 in place.
///   - `bulking` (%): volume broken up over volume in place; at least 100 %, at most 300 %; where left out 150 %,
///     because broken concrete takes 1.4 to 1.6 times its room.
///   - `box_weight` (ton): what one box or truck may carry; at least 0.110231131092 ton, at most 55.1155655462 ton;
///     where left out 10 ton, because a box of 10 tons.
///   - `box_volume` (yd3): what goes into one box, where that runs out first; at least 0.130795061931 yd3, at most
///     130.795061931 yd3; may be left out.
///   - `base` (in): thickness of the new base, compacted; none where the ground serves; more than 0 in, at most 120
///     in; may be left out.
///   - `base_loose` (%): volume of base as bought over compacted; at least 100 %, at most 300 %; where left out 120
///     %, because base loses a sixth when it is compacted.
///   - `new_thickness` (in): mean thickness of the new slab; none where nothing is poured; at least 0.25 in, at
///     most 60 in; may be left out.
///   - `rise` (in): how much higher the new floor is than the old one, on the mean; at least -60 in, at most 60 in;
///     where left out 0 in, because the new floor is as high as the old one.
///   - `breaking_price` (/ft2): price of breaking and loading; at least 0 /ft2, at most 92903040 /ft2; may be left
///     out.
///   - `load_price` (money): price of hauling one load; at least 0 money, at most 1000000000 money; may be left
///     out.
///   - `dump_price` (/ton): price of dumping; at least 0 /ton, at most 907184740000 /ton; may be left out.
///   - `base_price` (/yd3): price of base as bought; at least 0 /yd3, at most 764554857.984 /yd3; may be left out.
///   - `concrete_price` (/yd3): price of concrete, placed; at least 0 /yd3, at most 764554857.984 /yd3; may be left
///     out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_TEAR_OUT_IN_PLACE (yd3): old concrete in place.
///   - OVS_TEAR_OUT_MASS (ton): its mass.
///   - OVS_TEAR_OUT_LOOSE (yd3): its volume broken up.
///   - OVS_TEAR_OUT_LOADS: loads to the dump, by weight or by volume.
///   - OVS_TEAR_OUT_DIG_DEPTH (in): how deep the ground is dug below the old slab.
///   - OVS_TEAR_OUT_DIG (yd3): ground dug, in place; it is not in the loads.
///   - OVS_TEAR_OUT_BASE_IN_PLACE (yd3): new base, compacted.
///   - OVS_TEAR_OUT_BASE_BOUGHT (yd3): new base, loose, as it is bought.
///   - OVS_TEAR_OUT_CONCRETE (yd3): the new slab; none where nothing is poured.
///   - OVS_TEAR_OUT_COSTS: the cost of each part that there is.
///   - OVS_TEAR_OUT_TOTAL (money): all of it; none where a price is missing.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Basis: broken concrete weighs 4,050 lb/yd3 in place and bulks by 1.4 to 1.6: common practice, no source.
/// Basis: hairline, card, coin: cracks of 0.01, 0.03, 0.06 in; coin, pencil: steps of 1/16, 1/4 in; hollow spots, a
/// lot: 5, 25 %; a nominal 4 in is 3 1/2 in: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"area":"400 ft2","old_thickness":"4 in","base":"4 in","new_thickness":"5 in","rise":"1 in","breaking_price":"4.5 /ft2","load_price":"180 money","dump_price":"70 /ton"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_tear_out_us(
    area_ft2: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Number(area_ft2)),
    ];
    let request = Request::new(TEAR_OUT, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Breaking an old slab out: what is hauled away in how many loads, the new base, the new slab, the cost at the
/// caller's prices.
///
/// Equation: in place = area x old thickness; weight = in place x density; loose = in place x bulking; dug = base +
/// new thickness - old thickness - rise where above none; concrete = area x new thickness.
/// Taken for granted: thicknesses and rise are means over the area; a missing price stays missing and leaves no
/// total.
///
/// - `area_m2` (m2): area broken out; more than 0 m2, at most 1000000 m2.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `old_thickness` (mm): thickness of the old slab; at least 6.35 mm, at most 1524 mm; where left out 3 1/2 in,
///     because a nominal 4 in is 3 1/2 in.
///   - `density` (kg/m3): mass of the old concrete in place; at least 1000 kg/m3, at most 4000 kg/m3; where left
///     out 150 lb/ft3, because 4,050 lb/yd3 in place.
///   - `bulking` (%): volume broken up over volume in place; at least 100 %, at most 300 %; where left out 150 %,
///     because broken concrete takes 1.4 to 1.6 times its room.
///   - `box_weight` (t): what one box or truck may carry; at least 0.1 t, at most 50 t; where left out 10 ton,
///     because a box of 10 tons.
///   - `box_volume` (m3): what goes into one box, where that runs out first; at least 0.1 m3, at most 100 m3; may
///     be left out.
///   - `base` (mm): thickness of the new base, compacted; none where the ground serves; more than 0 mm, at most
///     3048 mm; may be left out.
///   - `base_loose` (%): volume of base as bought over compacted; at least 100 %, at most 300 %; where left out 120
///     %, because base loses a sixth when it is compacted.
///   - `new_thickness` (mm): mean thickness of the new slab; none where nothing is poured; at least 6.35 mm, at
///     most 1524 mm; may be left out.
///   - `rise` (mm): how much higher the new floor is than the old one, on the mean; at least -1524 mm, at most 1524
///     mm; where left out 0 in, because the new floor is as high as the old one.
///   - `breaking_price` (/m2): price of breaking and loading; at least 0 /m2, at most 1000000000 /m2; may be left
///     out.
///   - `load_price` (money): price of hauling one load; at least 0 money, at most 1000000000 money; may be left
///     out.
///   - `dump_price` (/t): price of dumping; at least 0 /t, at most 1000000000000 /t; may be left out.
///   - `base_price` (/m3): price of base as bought; at least 0 /m3, at most 1000000000 /m3; may be left out.
///   - `concrete_price` (/m3): price of concrete, placed; at least 0 /m3, at most 1000000000 /m3; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_TEAR_OUT_IN_PLACE (m3): old concrete in place.
///   - OVS_TEAR_OUT_MASS (t): its mass.
///   - OVS_TEAR_OUT_LOOSE (m3): its volume broken up.
///   - OVS_TEAR_OUT_LOADS: loads to the dump, by weight or by volume.
///   - OVS_TEAR_OUT_DIG_DEPTH (mm): how deep the ground is dug below the old slab.
///   - OVS_TEAR_OUT_DIG (m3): ground dug, in place; it is not in the loads.
///   - OVS_TEAR_OUT_BASE_IN_PLACE (m3): new base, compacted.
///   - OVS_TEAR_OUT_BASE_BOUGHT (m3): new base, loose, as it is bought.
///   - OVS_TEAR_OUT_CONCRETE (m3): the new slab; none where nothing is poured.
///   - OVS_TEAR_OUT_COSTS: the cost of each part that there is.
///   - OVS_TEAR_OUT_TOTAL (money): all of it; none where a price is missing.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Basis: broken concrete weighs 4,050 lb/yd3 in place and bulks by 1.4 to 1.6: common practice, no source.
/// Basis: hairline, card, coin: cracks of 0.01, 0.03, 0.06 in; coin, pencil: steps of 1/16, 1/4 in; hollow spots, a
/// lot: 5, 25 %; a nominal 4 in is 3 1/2 in: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"area":"400 ft2","old_thickness":"4 in","base":"4 in","new_thickness":"5 in","rise":"1 in","breaking_price":"4.5 /ft2","load_price":"180 money","dump_price":"70 /ton"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_tear_out_si(
    area_m2: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Number(area_m2)),
    ];
    let request = Request::new(TEAR_OUT, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_tear_out_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_tear_out_us_why(
    area_ft2: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Number(area_ft2)),
    ];
    let request = Request::new(TEAR_OUT, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_tear_out_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_tear_out_si_why(
    area_m2: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Number(area_m2)),
    ];
    let request = Request::new(TEAR_OUT, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}
