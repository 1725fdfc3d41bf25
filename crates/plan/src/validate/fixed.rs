//! What is fixed to a wall: openings and furring lie within it, and openings do not overlap.

use std::collections::BTreeSet;

use measure::Len;

use crate::element::{Body, Furring, Opening};
use crate::{EditError, Element, ElementId, Plan};

/// What is fixed to elements, which may be walls or have been, or to what they are fixed to; in the order of the ids.
pub(super) fn beside<'p>(
    plan: &'p Plan,
    elements: impl Iterator<Item = &'p Element>,
) -> Vec<&'p Element> {
    let hosts = elements.flat_map(|e| [Some(e.id), e.body.host()]).flatten();
    let hosts: BTreeSet<ElementId> = hosts.collect();
    let mut fixed: Vec<_> = hosts.into_iter().flat_map(|h| plan.elements.fixed_to(h)).collect();
    fixed.sort_unstable_by_key(|e| e.id);
    fixed
}

/// What is wrong with the things that are fixed to some walls, and with which. They are all that is fixed to these.
pub(super) fn problems(
    plan: &Plan,
    fixed: &[&Element],
    name: &dyn Fn(&Element) -> String,
) -> Vec<(ElementId, EditError)> {
    let mut problems = Vec::new();
    let mut standing: Vec<(ElementId, Len, Len, &Element)> = Vec::new();
    for &e in fixed {
        let found = match &e.body {
            Body::Opening(o) => in_wall(plan, name, e, o),
            Body::Furring(f) => on_shell(plan, name, e, f),
            _ => Ok(()),
        };
        match (found, &e.body) {
            (Ok(()), Body::Opening(o)) if e.stands() => {
                standing.push((o.host, o.at, o.at + o.width(), e));
            }
            (Ok(()), _) => {}
            (Err(problem), _) => problems.push((e.id, problem)),
        }
    }
    standing.sort_by_key(|&(host, at, _, e)| (host, at, e.id));
    for pair in standing.windows(2) {
        let [(host, _, end, first), (next_host, next_at, _, second)] = pair else { continue };
        if host == next_host && next_at < end {
            let host = plan.get(*host).map(name).unwrap_or_default();
            let (who, other) = (name(second), name(first));
            problems.push((second.id, EditError::OpeningsOverlap { who, other, host }));
        }
    }
    problems
}

fn in_wall(
    plan: &Plan,
    name: &dyn Fn(&Element) -> String,
    e: &Element,
    opening: &Opening,
) -> Result<(), EditError> {
    let host = host(plan, name, e, opening.host)?;
    let length = host.body.wall_line().map(|line| line.len()).ok_or_else(|| {
        let needed = "a foundation wall or a partition";
        EditError::HostKind { who: name(e), host: name(host), needed }
    })?;
    let (from, to) = (opening.at, opening.at + opening.width());
    if to > length {
        return Err(EditError::OffHost { who: name(e), host: name(host), from, to, length });
    }
    Ok(())
}

fn on_shell(
    plan: &Plan,
    name: &dyn Fn(&Element) -> String,
    e: &Element,
    furring: &Furring,
) -> Result<(), EditError> {
    let host = host(plan, name, e, furring.host)?;
    let Body::Shell(shell) = &host.body else {
        let needed = "a foundation wall";
        return Err(EditError::HostKind { who: name(e), host: name(host), needed });
    };
    let (from, to, length) = (furring.from, furring.to, shell.line().len());
    if from >= length {
        return Err(EditError::OffHost { who: name(e), host: name(host), from, to, length });
    }
    Ok(())
}

fn host<'p>(
    plan: &'p Plan,
    name: &dyn Fn(&Element) -> String,
    e: &Element,
    host: ElementId,
) -> Result<&'p Element, EditError> {
    plan.get(host).ok_or_else(|| EditError::HostMissing { who: name(e), host })
}
