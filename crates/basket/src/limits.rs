//! How much is too much, and why: every limit that keeps figures of a pattern, a picture or a template from
//! asking for more than a machine has.
//!
//! They are checked where data comes in, with a message that says what to write instead, and once more as a
//! budget where something is made from it: what would go beyond is made coarser or plain, and says so. None
//! of them is met by a basket that anybody weaves. `docs/limits.md` tells them to readers.

use crate::measure::Length;

/// The longest pattern or shelf file, in bytes. The longest of the examples has three thousand.
pub const PATTERN_BYTES: usize = 1_000_000;
/// The longest store that was written out as text, in bytes: with a hundred versions of each of some hundreds of
/// patterns, and years of movements.
pub const STORE_BYTES: usize = 200_000_000;
/// The longest measure of a part. A basket of 5 m is a house.
pub const PART: Length = Length::mm(5000.0);
/// Most staves of a basket. Fine work has some 150.
pub const STAVES: u32 = 999;
/// Most rows of a basket, all courses together. Fine work on a large mould has some 200.
pub const ROWS: u32 = 5000;
/// Most crossings of rows and staves that are drawn one by one: many times a large basket's 10,000. Beyond,
/// a chart is left out, and rows in the round are plain bands.
pub const CROSSINGS: u64 = 60_000;
/// Most points and curves of a drawing. A full chart of 60,000 crossings has some 300,000; each takes about
/// 60 bytes, and some 15 more as SVG.
pub const ELEMENTS: usize = 500_000;
/// Most triangles of the rows of a solid. A basket of 67 staves and 57 rows has some 400,000 when it is cut
/// finely. A triangle takes about 100 bytes while a picture is made of it, and two are made at a time.
pub const TRIANGLES: usize = 1_500_000;
/// Most pages on which a template at true size is printed. Nobody joins more; it is laid out with a rule.
pub const TILES: usize = 60;
/// Most rows of a table on a sheet, days told one by one, and rows to tick off. Large baskets have some 200 joins.
pub const TABLE_ROWS: usize = 400;
/// Most pages of a sheet. The longest that a pattern's own text can fill has some two hundred.
pub const PAGES: usize = 500;
/// The largest photograph, in bytes, of a mould or beside a note: as it comes from a good camera.
pub const PHOTO_BYTES: u64 = 25_000_000;
/// All photographs of a pattern together, in bytes.
pub const PHOTOS_BYTES: usize = 60_000_000;
/// Most pixels along a side of a photograph.
pub const PHOTO_SIDE: u32 = 10_000;
/// Most pixels of a photograph: as many as good cameras take. Decoded they are up to 160 MB.
pub const PHOTO_PIXELS: u64 = 40_000_000;
/// Most pixels of all photographs of a pattern together.
pub const PHOTOS_PIXELS: u64 = 320_000_000;
/// What stands beside the pixels of a picture, unpacked, in bytes: a profile of its colours, a comment.
pub const PICTURE_EXTRAS: u64 = 8_000_000;
/// The largest drawing of a weave, as a file, in bytes.
pub const CHART_BYTES: u64 = 8_000_000;
/// Most rows, and most staves, of a drawn weave. It is one repeat.
pub const CHART_SIDE: u32 = 2000;
/// The longest template of the maker's own, in bytes.
pub const TEMPLATE_BYTES: u64 = 1_000_000;
/// Most steps of the template of the pages of HTML. The built-in one takes some hundred thousand.
pub const TEMPLATE_STEPS: u64 = 50_000_000;
/// The longest that a sheet is set, in seconds, before a template counts as one without an end. The longest
/// of the built-in ones takes three.
pub const SETTING_SECONDS: u64 = 60;
/// The most memory while a sheet is set, in bytes, for the same reason. The built-in ones take a quarter of it.
pub const SETTING_BYTES: u64 = 2_000_000_000;
/// Most students of a class, all groups together; none is taught with more than some thirty.
pub const CLASS_STUDENTS: u32 = 60;
/// Most days of a class. Ten evenings are many.
pub const CLASS_DAYS: u32 = 100;
