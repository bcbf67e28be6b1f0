//! Packets: sheets, cut lists and drawings to take away.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::UnitsWord;

/// Paper in the printer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(rename_all = "lowercase")]
pub(crate) enum PaperWord {
    /// 8 1/2 × 11 in.
    Letter,
    /// 210 × 297 mm.
    A4,
}

/// Which packet.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct PacketRequest {
    /// The pattern.
    pub(crate) source: String,
    /// The paper; letter for inches and A4 for millimetres if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) paper: Option<PaperWord>,
    /// Language of the sheets, such as `en`.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) language: Option<String>,
    /// Units that stand first; the pattern's own if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) units: Option<UnitsWord>,
}

/// How far a packet is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(rename_all = "lowercase")]
pub(crate) enum PacketState {
    /// Being made.
    Working,
    /// All files are there.
    Done,
    /// Stopped by the page.
    Stopped,
    /// It cannot be made; [`Packet::fault`] says why.
    Failed,
}

/// A packet in the making, or made.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Packet {
    /// Its name for the other requests.
    pub(crate) id: String,
    /// How far it is.
    pub(crate) state: PacketState,
    /// What is being made now, such as `handout.pdf`.
    pub(crate) now: Option<String>,
    /// How many pieces of work are done.
    pub(crate) done: u32,
    /// Of how many.
    pub(crate) total: u32,
    /// Its files, when it is done, for `GET /api/packets/{id}/{file}`; `packet.zip` holds them all.
    pub(crate) files: Vec<PacketFile>,
    /// Why it cannot be made.
    pub(crate) fault: Option<String>,
}

/// One file of a packet.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct PacketFile {
    /// Its name.
    pub(crate) name: String,
    /// Its media type.
    pub(crate) media: String,
    /// How many bytes.
    pub(crate) bytes: u32,
}
