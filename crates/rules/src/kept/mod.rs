//! Findings of one plan after another, when little changes between them.
//!
//! A rule is asked again only about that of which something has changed ([`crate::Check`]); what it said about the rest
//! is kept, and so are measures that several rules ask for. Where more than places has changed ([`Changes::between`]
//! says `None`), everything is judged anew.

mod again;
mod store;

use std::sync::{Arc, LazyLock};

use measure::Len;
use space::{Changes, Facts};

use again::{Again, everything};
pub(crate) use store::Found;
use store::Store;

use crate::rule::Measures;
use crate::rules::way_out::need;
use crate::{Book, Findings, KeepClear, RULES, Severity, Sheet, rules};

/// Remembers what was found in one plan for the next. What it gives is what [`crate::check_with_keep_clears`] gives.
#[derive(Debug, Default)]
pub struct Kept {
    /// The book that every plan is held to, or nothing where each is held to the book of its site.
    book: Option<Book>,
    state: Option<State>,
}

#[derive(Debug)]
struct State {
    facts: Arc<Facts>,
    book: Book,
    /// How far each rule looks, and the farthest that any does.
    reach: Vec<Len>,
    farthest: Len,
    /// Whether all rooms are excused from an escape opening: it hangs on their areas together.
    excused: bool,
    measures: Measures,
    /// What each rule found.
    found: Vec<Store>,
}

impl State {
    fn new(facts: &Arc<Facts>, book: Book) -> State {
        let reach: Vec<Len> = RULES.iter().map(|rule| rule.check.reach(&book)).collect();
        State {
            facts: Arc::clone(facts),
            farthest: reach.iter().copied().fold(Len::ZERO, Len::max),
            reach,
            book,
            excused: false,
            measures: Measures::default(),
            found: vec![Store::default(); RULES.len()],
        }
    }
}

impl Kept {
    /// Holds every plan to one book, whatever its site says.
    pub fn held_to(book: Book) -> Kept {
        Kept { book: Some(book), state: None }
    }

    /// The findings and the keep-clear boxes of a plan, held to the book of its site if no other was given.
    pub fn check(&mut self, facts: &Arc<Facts>) -> (Findings, Vec<KeepClear>) {
        let before = self.state.take();
        let changes = before.as_ref().and_then(|s| Changes::between(&s.facts, facts));
        let mut state = match (before, &changes) {
            // The site is the same, and so is the book.
            (Some(state), Some(_)) => State { facts: Arc::clone(facts), ..state },
            _ => {
                let of_site = || Book::of(&facts.plan.site);
                State::new(facts, self.book.clone().unwrap_or_else(of_site))
            }
        };
        let mut sheet = Sheet::new(facts, &state.book);
        let excused = need::only_excused(&sheet);
        let changes = changes.filter(|_| excused == state.excused);
        state.excused = excused;
        let again = changes.map(|changes| Again::new(&sheet, changes, state.farthest));
        if let Some(again) = &again {
            sheet.measures = state.measures;
            again.measure(&mut sheet);
        }
        for ((rule, reach), found) in RULES.iter().zip(&state.reach).zip(&mut state.found) {
            let news = match &again {
                Some(again) => again.judge(&sheet, rule, *reach),
                None => {
                    *found = Store::default();
                    everything(&sheet, rule)
                }
            };
            if !news.is_empty() {
                found.put(&sheet, news);
            }
        }
        let keep_clears = rules::keep_clears(&sheet);
        state.measures = sheet.measures;
        let findings = in_order(&state.found);
        self.state = Some(state);
        (findings, keep_clears)
    }
}

/// The places of the rules in the order of their slugs.
static BY_SLUG: LazyLock<Vec<usize>> = LazyLock::new(|| {
    let mut places: Vec<usize> = (0..RULES.len()).collect();
    places.sort_by_key(|i| RULES[*i].slug);
    places
});

/// All findings in the order of [`crate::check`].
fn in_order(found: &[Store]) -> Findings {
    let of = |severity| BY_SLUG.iter().map(move |i| found[*i].shown(severity));
    Findings::new(Severity::ALL.into_iter().flat_map(of))
}
