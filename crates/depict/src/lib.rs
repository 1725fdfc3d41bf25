//! The plan as marks: the same picture for the screen and the sheet.
