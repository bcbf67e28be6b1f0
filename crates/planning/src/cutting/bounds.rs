//! Strands of one length that are needed at the very least.

/// As many as the pieces together are long: `⌈Σ size / room⌉`. No size is above the room.
pub fn by_length(sizes: &[i64], room: i64) -> u32 {
    let sum: i128 = sizes.iter().map(|size| i128::from(*size)).sum();
    let room = i128::from(room.max(1));
    ((sum + room - 1) / room).clamp(0, i128::from(u32::MAX)) as u32
}

/// The bound `L2` of S. Martello and P. Toth (*Knapsack Problems*, 1990, ch. 8.3): two pieces of more than
/// half a strand never share one, and shorter ones find only the room that those leave.
pub fn by_halves(sizes: &[i64], room: i64) -> u32 {
    let mut limits: Vec<i64> = sizes.iter().copied().filter(|size| *size <= room / 2).collect();
    limits.push(0);
    limits.sort_unstable();
    limits.dedup();
    limits.into_iter().map(|limit| leaving_out_below(sizes, room, limit)).max().unwrap_or(0)
}

fn leaving_out_below(sizes: &[i64], room: i64, limit: i64) -> u32 {
    let large = sizes.iter().filter(|size| **size > room - limit).count() as i128;
    let over_half: Vec<i64> =
        sizes.iter().copied().filter(|size| *size <= room - limit && *size > room - *size).collect();
    let small: i128 = sizes
        .iter()
        .filter(|size| **size >= limit && **size <= room - **size)
        .map(|size| i128::from(*size))
        .sum();
    let beside: i128 = over_half.iter().map(|size| i128::from(room - size)).sum();
    let room = i128::from(room.max(1));
    let more = ((small - beside).max(0) + room - 1) / room;
    (large + over_half.len() as i128 + more).clamp(0, i128::from(u32::MAX)) as u32
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn halves_see_what_length_alone_does_not() {
        // Three pieces of 60 in strands of 100: 180 long, yet no two share a strand.
        assert_eq!((by_length(&[60, 60, 60], 100), by_halves(&[60, 60, 60], 100)), (2, 3));
        assert_eq!((by_length(&[], 100), by_halves(&[], 100)), (0, 0));
    }
}
