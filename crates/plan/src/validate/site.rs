//! Site facts and findings that are set aside.

use crate::detail::Detail;
use crate::{Amendment, EditError, Plan, SetAside, Site, bounds};

use super::{details, element::len, text};

pub(super) fn check(site: &Site) -> Result<(), EditError> {
    let who = &|| "Site".to_owned();
    text::check(who, bounds::TITLE, &site.title)?;
    text::check(who, bounds::PLACE, &site.place)?;
    let papers = &site.papers;
    text::check(who, bounds::ADDRESS, &papers.address)?;
    text::check(who, bounds::PARCEL, &papers.parcel)?;
    text::check(who, bounds::OWNER, &papers.owner)?;
    text::check(who, bounds::AUTHOR, &papers.author)?;
    text::check(who, bounds::DATE, &papers.date)?;
    text::check(who, bounds::WORK, &papers.work)?;
    if let Some(north) = papers.north
        && !bounds::NORTH.holds(north as usize)
    {
        let (who, bound) = (who(), bounds::NORTH);
        return Err(EditError::CountOutOfRange { who, bound, value: north as usize });
    }
    amendments(&site.amendments)?;
    details::check(who, &site.details, Detail::of_site)?;
    len(who, bounds::JOIST_UNDERSIDE, site.joist_underside)?;
    len(who, bounds::CEILING_BUILD, site.ceiling.drop())?;
    len(who, bounds::FLOOR_BUILD, site.floor_build)?;
    len(who, bounds::CEILING_HEIGHT, site.ceiling_height())
}

/// Checks amendments: texts in range, no limit twice.
pub(crate) fn amendments(all: &[Amendment]) -> Result<(), EditError> {
    let who = &|| "Amendment".to_owned();
    if !bounds::AMENDMENTS.holds(all.len()) {
        return Err(EditError::TooManyAmendments { most: bounds::AMENDMENTS.most });
    }
    for (i, amendment) in all.iter().enumerate() {
        text::check(who, bounds::LIMIT, &amendment.limit)?;
        text::check(who, bounds::FIGURE, &amendment.figure)?;
        text::check(who, bounds::REASON, &amendment.reason)?;
        if all[..i].iter().any(|a| a.limit == amendment.limit) {
            return Err(EditError::AmendedTwice { limit: amendment.limit.clone() });
        }
    }
    Ok(())
}

/// Checks a set-aside: rule and reason given, every element there.
pub(crate) fn set_aside(plan: &Plan, set_aside: &SetAside) -> Result<(), EditError> {
    let who = &|| "Set aside".to_owned();
    text::check(who, bounds::RULE, &set_aside.rule)?;
    text::check(who, bounds::REASON, &set_aside.reason)?;
    match set_aside.elements.iter().find(|&&id| plan.get(id).is_none()) {
        Some(&id) => Err(EditError::Missing { id }),
        None => Ok(()),
    }
}
