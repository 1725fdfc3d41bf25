//! Carrying out a script.

use geometry::Pt;
use measure::Len;
use plan::{Edit, Element, ElementId, Plan, SetAside};
use rules::{Book, Finding};

use super::changes::{self, Moment};
use super::command::{Chosen, Command, Times};
use super::{Problem, Report, Step, expect, names, parse};
use crate::{Clock, EditorKey, Gesture, Mods, Session, Work, fields};

/// How near counts as "on" until a script says otherwise.
const REACH: Len = Len::inches(4);

/// Runs a script on a session. It stops at the first line that can't be read or carried out, or whose
/// expectation is not met. `clock` gives the times of the steps.
pub fn run(script: &str, mut session: Session, clock: Clock) -> Report {
    session.set_clock(clock);
    let mut stage = Stage {
        session,
        reach: REACH,
        at: Pt::default(),
        clipboard: None,
        marks: Vec::new(),
        work: Work::default(),
    };
    // The plan as opened is derived before the first step, so that its time is not counted there.
    stage.session.checked();
    let mut steps = Vec::new();
    let mut problem = None;
    for (i, text) in script.lines().enumerate() {
        let written = parse::without_comment(text).trim().to_owned();
        let fault = |unmet, what| Problem { line: i + 1, command: written.clone(), what, unmet };
        let command = match parse::line(text, stage.session.system()) {
            Ok(Some(command)) => command,
            Ok(None) => continue,
            Err(what) => {
                problem = Some(fault(false, what));
                break;
            }
        };
        let before = Moment::of(&mut stage.session);
        stage.work = Work::default();
        let unmet = matches!(command, Command::Expect(_));
        match stage.carry_out(&command) {
            Ok(listed) => {
                let after = Moment::of(&mut stage.session);
                let mut said = listed;
                if !matches!(command, Command::Expect(_) | Command::Check) {
                    let made = !matches!(command, Command::Undo(_) | Command::Redo(_));
                    said.extend(changes::between(&before, &after, &stage.session, made));
                }
                steps.push(Step { line: i + 1, command: written, said, work: stage.work });
            }
            Err(what) => {
                problem = Some(fault(unmet, what));
                break;
            }
        }
    }
    Report { steps, problem, session: stage.session }
}

/// A script being carried out.
struct Stage {
    session: Session,
    reach: Len,
    /// Where the pointer is.
    at: Pt,
    clipboard: Option<String>,
    marks: Vec<(String, Plan)>,
    work: Work,
}

impl Stage {
    /// Carries out a command; gives what it lists.
    fn carry_out(&mut self, command: &Command) -> Result<Vec<String>, String> {
        match command {
            Command::Tool(tool) => self.session.set_tool(*tool),
            Command::Option { key, value } => {
                let system = self.session.system();
                fields::set_option(self.session.options_mut(), key, value, system)?;
            }
            Command::Press(at, mods) => self.press(*at, *mods),
            Command::Move(at, mods) => self.slide(*at, *mods),
            Command::Release(at, mods) => self.release(at.unwrap_or(self.at), *mods),
            Command::Click(at, mods) => self.click(*at, *mods),
            Command::DoubleClick(at, mods) => {
                self.click(*at, *mods);
                self.click(*at, *mods);
                self.feed(Gesture::DoubleClick { at: *at, reach: self.reach, mods: *mods });
            }
            Command::Drag(from, to, mods) => {
                self.slide(*from, *mods);
                self.press(*from, *mods);
                self.slide(*to, *mods);
                self.release(*to, *mods);
            }
            Command::Type(text) => self.type_text(text),
            Command::Enter(text) => {
                self.type_text(text);
                self.feed(Gesture::Key { key: EditorKey::Enter, mods: Mods::default() });
            }
            Command::Key(key, mods) => self.feed(Gesture::Key { key: *key, mods: *mods }),
            Command::Select(chosen) => self.select(chosen)?,
            Command::Dimension(id, value) => {
                self.timed(|session| session.type_dimension(*id, *value))?;
            }
            Command::Set { name, field, value } => {
                let old = names::element(self.session.plan(), name)?.clone();
                let new = fields::set(&old, field, value, self.session.system())?;
                let label = format!("Set {field} of {}", old.name());
                self.apply(&label, &Edit::Replace(new))?;
            }
            Command::Site { key, value } => {
                let site = &self.session.plan().site;
                let site = fields::set_site(site, key, value, self.session.system())?;
                self.apply(&format!("Set {key}"), &Edit::Site(Box::new(site)))?;
            }
            Command::Apply { rule, on, nth } => self.remedy(rule, on.as_deref(), *nth)?,
            Command::SetAside { rule, on, reason } => {
                let finding = self.finding(rule, on.as_deref())?;
                let (rule, reason) = (rule.clone(), reason.clone());
                let label = format!("Set {rule} aside");
                let elements = finding.elements;
                self.apply(&label, &Edit::SetAside(SetAside { rule, elements, reason }))?;
            }
            Command::Undo(times) => return self.again(*times, Session::undo, "undo"),
            Command::Redo(times) => return self.again(*times, Session::redo, "redo"),
            Command::Delete => self.timed(Session::delete_selected),
            Command::Duplicate => self.timed(Session::duplicate_selected),
            Command::Copy => match self.session.copy_selected() {
                Some(text) => self.clipboard = Some(text),
                None => return Err("nothing is selected".to_owned()),
            },
            Command::Paste => {
                let text = self.clipboard.clone().ok_or("nothing has been copied")?;
                self.timed(|session| session.paste(&text))?;
            }
            Command::Mark(word) => {
                let plan = Plan::clone(self.session.plan());
                self.marks.retain(|(known, _)| known != word);
                self.marks.push((word.clone(), plan));
            }
            Command::Units(system) => self.session.set_system(*system),
            Command::Reach(reach) => self.reach = *reach,
            Command::Check => return Ok(self.list()),
            Command::Expect(expect) => expect::check(expect, &mut self.session, &self.marks)?,
        }
        Ok(Vec::new())
    }

    /// Does something to the session and adds its work, with the facts and findings that it needs.
    fn timed<T>(&mut self, act: impl FnOnce(&mut Session) -> T) -> T {
        let result = act(&mut self.session);
        self.session.checked();
        let work = self.session.work();
        self.work.edit += work.edit;
        self.work.derive += work.derive;
        self.work.check += work.check;
        result
    }

    fn feed(&mut self, gesture: Gesture) {
        self.timed(|session| session.feed(&gesture));
    }

    fn press(&mut self, at: Pt, mods: Mods) {
        self.at = at;
        self.feed(Gesture::Press { at, reach: self.reach, mods });
    }

    fn slide(&mut self, at: Pt, mods: Mods) {
        self.at = at;
        self.feed(Gesture::Move { at, reach: self.reach, mods });
    }

    fn release(&mut self, at: Pt, mods: Mods) {
        self.at = at;
        self.feed(Gesture::Release { at, reach: self.reach, mods });
    }

    fn click(&mut self, at: Pt, mods: Mods) {
        self.slide(at, mods);
        self.press(at, mods);
        self.release(at, mods);
    }

    fn type_text(&mut self, text: &str) {
        for c in text.chars() {
            self.feed(Gesture::Char(c));
        }
    }

    fn apply(&mut self, label: &str, edit: &Edit) -> Result<(), String> {
        self.timed(|session| session.apply(label, edit)).map_err(|error| error.to_string())
    }

    fn select(&mut self, chosen: &Chosen) -> Result<(), String> {
        match chosen {
            Chosen::Names(list) => {
                let plan = self.session.plan();
                let ids: Result<Vec<ElementId>, String> =
                    list.iter().map(|name| names::element(plan, name).map(|e| e.id)).collect();
                self.session.select(ids?);
            }
            Chosen::All => self.session.select_all(),
            Chosen::Nothing => self.session.select([]),
            Chosen::Next => self.session.select_next(false),
            Chosen::Previous => self.session.select_next(true),
        }
        Ok(())
    }

    /// Undoes or does again so many times; gives the names of the steps.
    fn again(
        &mut self,
        times: Times,
        act: fn(&mut Session) -> Option<String>,
        word: &str,
    ) -> Result<Vec<String>, String> {
        let mut said = Vec::new();
        while times != Times::N(said.len()) {
            match (self.timed(act), times) {
                (Some(label), _) => said.push(format!("{word}: {label}")),
                (None, Times::All) => break,
                (None, Times::N(_)) => return Err(format!("there is nothing to {word}")),
            }
        }
        Ok(said)
    }

    /// The finding of a rule on the shown plan.
    fn finding(&mut self, rule: &str, on: Option<&str>) -> Result<Finding, String> {
        let checked = self.session.checked();
        let plan = self.session.shown();
        let id = on.map(|name| names::element(plan, name).map(|e| e.id)).transpose()?;
        let found = expect::findings(&checked, rule, id);
        found.first().map(|f| Finding::clone(f)).ok_or_else(|| {
            format!(
                "there is no such finding; {}",
                expect::known(&checked, plan, self.session.system())
            )
        })
    }

    fn remedy(&mut self, rule: &str, on: Option<&str>, nth: usize) -> Result<(), String> {
        let finding = self.finding(rule, on)?;
        let checked = self.session.checked();
        let book = Book::of(&self.session.shown().site);
        let remedies = rules::remedies(&finding, &checked.facts, &book);
        let n = remedies.len();
        let remedy = remedies
            .get(nth - 1)
            .ok_or_else(|| format!("the finding has {n} remedies; there is no number {nth}"))?;
        let label = remedy.label.say(self.session.system());
        self.apply(&label, &remedy.edit)
    }

    /// Every finding, one line each.
    fn list(&mut self) -> Vec<String> {
        let checked = self.session.checked();
        let (plan, system) = (self.session.shown(), self.session.system());
        if checked.findings.is_empty() {
            return vec!["no findings".to_owned()];
        }
        checked.findings.iter().map(|f| changes::words(f, plan, system)).collect()
    }
}

/// The short name of an element, or its number where it is not in the plan.
pub(super) fn name(plan: &Plan, id: ElementId) -> String {
    plan.get(id).map_or_else(|| id.0.to_string(), Element::name)
}
