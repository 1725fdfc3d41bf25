//! The findings of a plan.

use std::ops::Deref;
use std::sync::{Arc, OnceLock};

use crate::Finding;
use crate::kept::Found;

/// All findings of a plan, in order: corrections first, then by rule and element. It is made of parts that are shared
/// between the findings of plans that are almost the same; the whole list is put together when it is asked for first.
#[derive(Debug)]
pub struct Findings {
    parts: Vec<Arc<Vec<Found>>>,
    whole: OnceLock<Vec<Arc<Finding>>>,
}

impl Findings {
    pub(crate) fn new<'a>(parts: impl Iterator<Item = &'a Arc<Vec<Found>>>) -> Findings {
        let parts = parts.filter(|part| !part.is_empty()).cloned().collect();
        Findings { parts, whole: OnceLock::new() }
    }
}

impl From<Vec<Arc<Finding>>> for Findings {
    fn from(findings: Vec<Arc<Finding>>) -> Findings {
        Findings { parts: Vec::new(), whole: findings.into() }
    }
}

impl Deref for Findings {
    type Target = [Arc<Finding>];

    fn deref(&self) -> &[Arc<Finding>] {
        self.whole.get_or_init(|| {
            self.parts.iter().flat_map(|part| part.iter()).map(|f| Arc::clone(&f.finding)).collect()
        })
    }
}
