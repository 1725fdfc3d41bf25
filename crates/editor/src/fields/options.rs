//! The fields of the tool options that are not those of a door, a window or a furnishing.

use super::elements::{
    overhead_kind, room_use, section, section_depth, section_width, service_kind, state,
};
use super::slot::{Field, Fields, Slot};
use crate::ToolOptions;

impl Fields for ToolOptions {
    const TABLE: &'static [Field<ToolOptions>] = &[
        ("shell-thickness", |o| Some(Slot::Len(&mut o.shell_thickness))),
        ("shell-height", |o| Some(Slot::Len(&mut o.shell_height))),
        ("partition-state", |o| state(&mut o.partition_state)),
        ("stud-spacing", |o| Some(Slot::Len(&mut o.stud_spacing))),
        ("column-shape", |o| section(&mut o.column)),
        ("column-width", |o| section_width(&mut o.column)),
        ("column-depth", |o| section_depth(&mut o.column)),
        ("stair-width", |o| Some(Slot::Len(&mut o.stair_width))),
        ("stair-risers", |o| Some(Slot::Count(&mut o.stair_risers))),
        ("stair-rise", |o| Some(Slot::Len(&mut o.stair_rise))),
        ("stair-run", |o| Some(Slot::Len(&mut o.stair_run))),
        ("stair-headroom", |o| Some(Slot::Len(&mut o.stair_headroom))),
        ("overhead", |o| overhead_kind(&mut o.overhead)),
        ("overhead-width", |o| Some(Slot::Len(&mut o.overhead_width))),
        ("overhead-underside", |o| Some(Slot::Len(&mut o.overhead_underside))),
        ("service", |o| service_kind(&mut o.service)),
        ("room-use", |o| room_use(&mut o.room_use)),
        ("room-name", |o| Some(Slot::Text(&mut o.room_name))),
        ("note", |o| Some(Slot::Text(&mut o.note))),
        ("snap", |o| Some(Slot::Flag(&mut o.snap))),
        ("grid", |o| Some(Slot::Len(&mut o.grid))),
    ];
}
