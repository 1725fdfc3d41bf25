//! What the command line accepts.

use std::path::PathBuf;

use clap::{ArgGroup, Args as ClapArgs, Parser, Subcommand};

/// Draw a basement and its obstacles, and see code concerns while a wall is still moving.
///
/// A planning aid: model-code figures differ by place and edition, and your building department decides.
#[derive(Debug, Parser)]
#[command(
    name = "cellarwright",
    version,
    args_conflicts_with_subcommands = true,
    subcommand_negates_reqs = true,
    after_help = "Exit codes: 0 done, 1 corrections found or an expectation not met, 2 wrong usage, \
                  3 no window can be opened, 4 a file cannot be read or written."
)]
pub struct Args {
    #[command(flatten)]
    pub window: WindowArgs,
    #[command(subcommand)]
    pub task: Option<Task>,
}

/// Opening the window.
#[derive(Clone, Debug, Default, ClapArgs)]
pub struct WindowArgs {
    /// The plan to open; the first demo plan when none is given.
    pub plan: Option<PathBuf>,
    /// Closes the window after its first frame.
    #[arg(long, hide = true)]
    pub quit_after_first_frame: bool,
    /// Prints how long frames took when the window closes.
    #[arg(long, hide = true)]
    pub timing: bool,
    /// Compares what is kept up from step to step with what is worked out anew; a difference goes to the log.
    #[arg(long, hide = true)]
    pub self_check: bool,
    /// Writes what is on the screen, and where, into a file whenever that changes; for the real-window test.
    #[arg(long, hide = true, value_name = "FILE")]
    pub tell: Option<PathBuf>,
}

#[derive(Debug, Subcommand)]
pub enum Task {
    /// Check a plan and list the findings.
    Check(CheckArgs),
    /// How wide the way to each service point and room is, and where it pinches.
    Ways(WaysArgs),
    /// Whether a thing gets from where people come in to each room.
    Carry(CarryArgs),
    /// The clear heights of each room, and the floor at or above those that the code names.
    Headroom(HeadroomArgs),
    /// How far an element may be moved before something breaks, and where each rule holds.
    RoomToMove(RoomToMoveArgs),
    /// Write the permit set, sheets to scale, and tell what a permit desk will find.
    Sheets(SheetsArgs),
    /// Show the page of a rule: what it checks, why, where it comes from, how it is measured.
    Explain(ExplainArgs),
    /// Drive the editor by a script of gestures, without a window.
    Rehearse(RehearseArgs),
}

#[derive(Debug, ClapArgs)]
pub struct CheckArgs {
    /// The plan file.
    pub plan: PathBuf,
    /// Write JSON (documented in docs/check-json.md).
    #[arg(long)]
    pub json: bool,
    /// Check by another edition of the residential code than the plan names: 2018, 2021 or 2024.
    #[arg(long, value_name = "YEAR", value_parser = edition)]
    pub edition: Option<plan::Edition>,
    /// Check by the amendments of another place than the plan names, such as fargo-nd; `model` for none.
    #[arg(long, value_name = "PLACE", value_parser = place)]
    pub place: Option<String>,
    /// Check by the amendments in a file as well (documented in docs/amendments.md).
    #[arg(long, value_name = "FILE")]
    pub amendments: Option<PathBuf>,
    /// Write lengths in millimetres.
    #[arg(long)]
    pub metric: bool,
}

#[derive(Debug, ClapArgs)]
pub struct WaysArgs {
    /// The plan file.
    pub plan: PathBuf,
    /// Write JSON (documented in docs/ways-json.md).
    #[arg(long)]
    pub json: bool,
    /// Write lengths in millimetres.
    #[arg(long)]
    pub metric: bool,
}

#[derive(Debug, ClapArgs)]
pub struct HeadroomArgs {
    /// The plan file.
    pub plan: PathBuf,
    /// Write JSON (documented in docs/headroom-json.md).
    #[arg(long)]
    pub json: bool,
    /// Write lengths in millimetres.
    #[arg(long)]
    pub metric: bool,
}

#[derive(Debug, ClapArgs)]
#[command(group = ArgGroup::new("what_thing").required(true).args(["size", "thing"]))]
pub struct CarryArgs {
    /// The plan file.
    pub plan: PathBuf,
    /// Its three sizes, such as 84x36x34; bare numbers are inches.
    #[arg(long, value_name = "AxBxC", value_parser = super::carry::read_size)]
    pub size: Option<[measure::Len; 3]>,
    /// A common thing: heater, sofa, board, desk, mattress or washer. Measure yours.
    #[arg(long, value_parser = super::carry::thing)]
    pub thing: Option<[measure::Len; 3]>,
    /// Write JSON (documented in docs/carry-json.md).
    #[arg(long)]
    pub json: bool,
    /// Write lengths in millimetres.
    #[arg(long)]
    pub metric: bool,
}

#[derive(Debug, ClapArgs)]
pub struct RoomToMoveArgs {
    /// The plan file.
    pub plan: PathBuf,
    /// The element's name, such as W14.
    pub element: String,
    /// Write JSON (documented in docs/room-to-move-json.md).
    #[arg(long)]
    pub json: bool,
    /// Write lengths in millimetres.
    #[arg(long)]
    pub metric: bool,
}

#[derive(Debug, ClapArgs)]
pub struct SheetsArgs {
    /// The plan file.
    pub plan: PathBuf,
    /// The folder to write into; made where it is missing.
    #[arg(long, value_name = "DIR")]
    pub out: PathBuf,
    /// The size of the paper: letter, tabloid, arch-c, arch-d, a4 or a3.
    #[arg(long, default_value = "tabloid", value_parser = paper)]
    pub paper: sheets::Paper,
    /// Kinds of files, with commas between.
    #[arg(long, value_delimiter = ',', default_value = "pdf")]
    pub format: Vec<crate::export::Format>,
    /// Check by the list of this department, by its code such as DOU; by all lists when none is named.
    #[arg(long, value_name = "CODE", value_parser = list)]
    pub list: Option<String>,
    /// Draw the existing and the proposed plan on one sheet.
    #[arg(long)]
    pub both_plans: bool,
    /// Draw electrical, mechanical and plumbing in one plan.
    #[arg(long)]
    pub together: bool,
    /// Put everything on one sheet, where the paper has room for it.
    #[arg(long)]
    pub one_sheet: bool,
    /// Write JSON (documented in docs/sheets-json.md).
    #[arg(long)]
    pub json: bool,
    /// Write lengths in millimetres and draw at metric scales.
    #[arg(long)]
    pub metric: bool,
}

#[derive(Debug, ClapArgs)]
#[command(group = ArgGroup::new("what").required(true).args(["rule", "list"]))]
pub struct ExplainArgs {
    /// The rule's name, such as panel-depth.
    pub rule: Option<String>,
    /// List every rule, grouped.
    #[arg(long)]
    pub list: bool,
    /// Draw an example of what the rule finds, as SVG.
    #[arg(long, value_name = "FILE", requires = "rule")]
    pub figure: Option<PathBuf>,
}

#[derive(Debug, ClapArgs)]
pub struct RehearseArgs {
    /// The script (documented in docs/rehearse.md); `-` reads it from standard input.
    pub script: PathBuf,
    /// Start from this plan instead of a blank one.
    #[arg(long, value_name = "PLAN")]
    pub plan: Option<PathBuf>,
    /// Save the plan at the end of the script.
    #[arg(long, value_name = "OUT")]
    pub save: Option<PathBuf>,
    /// Write JSON, one object for the whole rehearsal.
    #[arg(long)]
    pub json: bool,
}

fn paper(text: &str) -> Result<sheets::Paper, String> {
    sheets::Paper::from_word(text).ok_or_else(|| {
        let words: Vec<&str> = sheets::Paper::ALL.iter().map(|p| p.word()).collect();
        format!("the sizes of paper are {}", words.join(", "))
    })
}

fn list(text: &str) -> Result<String, String> {
    let known = |d: &sheets::Department| format!("{} {}", d.code, d.name);
    match sheets::department(text) {
        Some(department) => Ok(department.code.clone()),
        None => {
            let all: Vec<String> = sheets::departments().iter().map(known).collect();
            Err(format!("no list has this code; there are\n  {}", all.join("\n  ")))
        }
    }
}

/// The key of a place; empty for the model code.
fn place(text: &str) -> Result<String, String> {
    match text {
        "model" => Ok(String::new()),
        key if rules::locality(key).is_some() => Ok(key.to_owned()),
        key => Err(rules::unknown_place(key)),
    }
}

fn edition(text: &str) -> Result<plan::Edition, String> {
    text.parse()
        .ok()
        .and_then(plan::Edition::from_year)
        .ok_or_else(|| "the editions are 2018, 2021 and 2024".to_owned())
}
