//! Which limits are shown.

use crate::quantity::{Topic, catalogue};
use crate::study::walk_round::{Finding, LIMITS, Limit, Verdict};

/// Which limits are shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Filter {
    /// Every one that applies.
    #[default]
    All,
    /// What gives, may give or has no answer.
    InDoubt,
    /// What is not known yet.
    NotKnown,
    /// Those of a topic.
    Of(Topic),
}

impl Filter {
    /// Every filter there is: the topics are those that limits are of.
    pub fn offered() -> impl Iterator<Item = Self> {
        let of_limits = |topic: &Topic| LIMITS.iter().any(|limit| topic_of(limit) == Some(*topic));
        let topics = Topic::ALL.iter().copied().filter(of_limits).map(Self::Of);
        [Self::All, Self::InDoubt, Self::NotKnown].into_iter().chain(topics)
    }

    /// What it is called.
    pub fn in_words(self) -> String {
        match self {
            Self::All => "All".to_owned(),
            Self::InDoubt => "Gives or in doubt".to_owned(),
            Self::NotKnown => "Not known yet".to_owned(),
            Self::Of(topic) => topic.title().to_owned(),
        }
    }

    /// Whether it shows a limit. What does not apply stands apart.
    pub fn shows(self, finding: &Finding) -> bool {
        let verdict = &finding.verdict;
        *verdict != Verdict::DoesNotApply
            && match self {
                Self::All => true,
                Self::InDoubt => {
                    matches!(verdict, Verdict::Gives | Verdict::Doubtful | Verdict::Invalid(_))
                }
                Self::NotKnown => matches!(verdict, Verdict::NotKnown(_)),
                Self::Of(topic) => topic_of(finding.limit) == Some(topic),
            }
    }
}

/// The topic of a limit is that of its margin.
fn topic_of(limit: &Limit) -> Option<Topic> {
    catalogue::find(limit.margin.name()).map(|entry| entry.topic)
}
