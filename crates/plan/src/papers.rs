//! What the sheets say about the project besides the drawing.

use serde::{Deserialize, Serialize};

/// The entries of the title block. What is empty is left blank on paper, to be filled in by hand.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Papers {
    /// Street and town of the house.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub address: String,
    /// Parcel or lot number.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub parcel: String,
    #[serde(skip_serializing_if = "String::is_empty")]
    pub owner: String,
    /// Who drew the plan.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub author: String,
    /// The date of the drawing, as it is to be printed. The program has no clock of its own.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub date: String,
    /// Where north is: degrees clockwise from the top of the drawing, 0 to 359.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub north: Option<u32>,
    /// What is to be done, in a sentence or two.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub work: String,
}

impl Papers {
    /// Whether nothing is entered.
    pub fn is_empty(&self) -> bool {
        *self == Papers::default()
    }
}
