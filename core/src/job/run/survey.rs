//! The surveyed old slab of a job.

use crate::failure::{Code, Failure, Result};
use crate::job::input::{ElevationsInput, Job};
use crate::survey::Survey;
use crate::survey::input::SurveyInput;

impl Job {
    /// The surveyed old slab of the job.
    ///
    /// # Errors
    /// A job that says no heights, or whatever the outline or the survey is refused for.
    pub fn surveyed(&self) -> Result<Survey> {
        let outline = self.outline.clone().ok_or_else(|| missing("outline"))?;
        if self.level.is_some() && self.survey.is_some() {
            return Err(Failure::new(Code::Contradiction, "survey")
                .written("level and survey")
                .allowed("one of them")
                .remedy("keep the rods or the elevations"));
        }
        let level = self.level.clone();
        let elevations = match (&level, &self.survey) {
            (None, None) => return Err(missing("level")),
            (_, elevations) => elevations.clone().unwrap_or_default(),
        };
        let given = self.survey.is_some();
        let changes = self.clean_up.clone();
        let ElevationsInput { grid, shots, faces, instrument, texture, beyond_allowed, leave_out } =
            elevations;
        let input = SurveyInput {
            outline,
            level,
            grid,
            shots,
            faces,
            instrument,
            texture,
            beyond_allowed,
            leave_out,
            changes,
        };
        Survey::from_input(&input).map_err(|failure| in_job(failure, given))
    }

    /// A survey handed over, after the clean-up that the job asks for.
    pub(super) fn cleaned(&self, survey: &Survey) -> Result<Survey> {
        let mut survey = survey.clone();
        for (index, change) in self.clean_up.iter().enumerate() {
            let changed = change.build().and_then(|change| survey.after(change));
            survey = changed.map_err(|failure| failure.under(&format!("clean_up[{index}]")))?;
        }
        Ok(survey)
    }

    /// Refuses a survey handed over beside one that the job itself describes.
    pub(super) fn nothing_surveyed(&self) -> Result<()> {
        let described = [
            ("outline", self.outline.is_some()),
            ("level", self.level.is_some()),
            ("survey", self.survey.is_some()),
        ];
        match described.iter().find(|(_, given)| *given) {
            None => Ok(()),
            Some((path, _)) => Err(Failure::new(Code::Contradiction, *path)
                .written(format!("{path} in the job, and a survey handed over with it"))
                .allowed("one of them")
                .remedy(format!("leave {path} out of the job, or hand no survey over"))),
        }
    }
}

fn missing(path: &str) -> Box<Failure> {
    Failure::new(Code::KeyMissing, path)
        .written("nothing")
        .allowed("outline, and level or survey")
        .remedy("describe the old slab, or hand a survey over with the job")
}

/// The paths of a survey in the words of the job: elevations stand under `survey`, changes under `clean_up`.
fn in_job(mut failure: Box<Failure>, elevations_given: bool) -> Box<Failure> {
    if let Some(rest) = failure.path.strip_prefix("changes") {
        failure.path = format!("clean_up{rest}");
        return failure;
    }
    let elevations = ["grid", "shots", "faces", "leave_out"].iter().any(|key| failure.path.starts_with(key));
    if elevations_given && elevations { failure.under("survey") } else { failure }
}
