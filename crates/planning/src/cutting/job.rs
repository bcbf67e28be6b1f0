//! What is to be cut, and from what.

use basket::Length;

/// Stock of one length.
#[derive(Clone, Debug, PartialEq)]
pub struct Stock {
    /// How long one strand is.
    pub length: Length,
    /// How many there are; none for as many as wanted.
    pub count: Option<u32>,
    /// What one costs, in the smallest unit of money; an offcut costs nothing.
    pub cost: u64,
}

/// Pieces of one length.
#[derive(Clone, Debug, PartialEq)]
pub struct Piece {
    /// How long one is.
    pub length: Length,
    /// How many are wanted.
    pub count: u32,
}

/// A job of cutting.
#[derive(Clone, Debug, PartialEq)]
pub struct Job {
    /// What there is to cut from.
    pub stocks: Vec<Stock>,
    /// What is wanted.
    pub pieces: Vec<Piece>,
    /// What is lost at each cut, or trimmed from each piece.
    pub kerf: Length,
}

/// Why there is no plan.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum CuttingError {
    /// A length or the kerf is negative, not finite or beyond a kilometre, a piece or stock has no length.
    #[error("a piece, a strand or the kerf has no length that can be cut")]
    BadLength,
    /// More lengths or more strands than are planned at once.
    #[error("more than {MOST_LENGTHS} different lengths, or more than {MOST_PIECES} pieces, at once")]
    TooMany,
    /// A cost beyond what is reckoned with.
    #[error("a strand costs more than can be reckoned with")]
    TooDear,
    /// Pieces for which there is no stock, as places in the job with how many are missing.
    #[error("the stock does not suffice")]
    NotEnough(Vec<(usize, u32)>),
}

/// Different lengths of pieces, or of stock, in one job.
pub const MOST_LENGTHS: usize = 200;
/// Pieces in one job.
pub const MOST_PIECES: u32 = 100_000;
/// Cost of one strand, in the smallest unit of money.
pub const MOST_COST: u64 = 1_000_000_000;
/// Longest strand.
pub const LONGEST: Length = Length::mm(1_000_000.0);
