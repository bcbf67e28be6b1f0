//! What holds of every cutting plan.

use std::ops::ControlFlow;

use basket::Length;
use planning::cutting::bounds::{by_halves, by_length};
use planning::cutting::{CuttingError, Job, Piece, Plan, Stock, solve, strands_by_first_fit};
use proptest::prelude::*;

fn stock(mm: f64, count: Option<u32>, cost: u64) -> Stock {
    Stock { length: Length::mm(mm), count, cost }
}

fn piece(mm: f64, count: u32) -> Piece {
    Piece { length: Length::mm(mm), count }
}

fn job(stocks: &[Stock], pieces: &[Piece], kerf: f64) -> Job {
    Job { stocks: stocks.to_vec(), pieces: pieces.to_vec(), kerf: Length::mm(kerf) }
}

fn planned(job: &Job) -> Result<Plan, CuttingError> {
    solve(job, &mut |_| ControlFlow::Continue(()))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    /// First fit with the longest first takes at most 11/9 of the optimum and 6/9 (G. Dósa, "The Tight Bound
    /// of First Fit Decreasing Bin-Packing Algorithm", 2007); the two bounds lie below the optimum, that of
    /// halves above that of length (S. Martello, P. Toth, *Knapsack Problems*, 1990, ch. 8.3).
    #[test]
    fn the_optimum_lies_between_its_bounds(
        pieces in prop::collection::vec((50_u32..900, 1_u32..6), 1..9),
    ) {
        let sizes: Vec<i64> =
            pieces.iter().flat_map(|(mm, count)| std::iter::repeat_n(i64::from(*mm), *count as usize)).collect();
        let pieces: Vec<Piece> = pieces.iter().map(|(mm, count)| piece(f64::from(*mm), *count)).collect();
        let plan = planned(&job(&[stock(1000.0, None, 1)], &pieces, 0.0)).unwrap();
        prop_assert!(plan.is_proven());
        let best = u32::try_from(plan.cost).unwrap();
        let quick = strands_by_first_fit(&sizes, 1000);
        prop_assert!(by_length(&sizes, 1000) <= by_halves(&sizes, 1000));
        prop_assert!(by_halves(&sizes, 1000) <= best);
        prop_assert!(best <= quick);
        prop_assert!(9 * quick <= 11 * best + 6);
    }

    /// No input brings the planner down, and what it cannot plan it says.
    #[test]
    fn any_job_is_planned_or_refused(
        stocks in prop::collection::vec((any::<f64>(), prop::option::of(0_u32..9), any::<u64>()), 0..4),
        pieces in prop::collection::vec((any::<f64>(), any::<u32>()), 0..4),
        kerf in any::<f64>(),
    ) {
        let stocks: Vec<Stock> = stocks.iter().map(|(mm, count, cost)| stock(*mm, *count, *cost)).collect();
        let pieces: Vec<Piece> = pieces.iter().map(|(mm, count)| piece(*mm, *count)).collect();
        if let Ok(plan) = planned(&job(&stocks, &pieces, kerf)) {
            let wanted: u64 = pieces.iter().map(|piece| u64::from(piece.count)).sum();
            prop_assert_eq!(plan.strands.iter().map(|strand| strand.pieces.len() as u64).sum::<u64>(), wanted);
        }
    }
}

#[test]
fn what_is_missing_is_said() {
    // Two strands of 2000 give four pieces of 900, of five that are wanted.
    let short = job(&[stock(2000.0, Some(2), 3)], &[piece(900.0, 5)], 0.0);
    assert_eq!(planned(&short), Err(CuttingError::NotEnough(vec![(0, 1)])));
    let long = job(&[stock(2000.0, None, 3)], &[piece(500.0, 1), piece(2100.0, 2)], 0.0);
    assert_eq!(planned(&long), Err(CuttingError::NotEnough(vec![(1, 2)])));
    let nothing = job(&[stock(2000.0, None, 3)], &[piece(0.0, 1)], 0.0);
    assert_eq!(planned(&nothing), Err(CuttingError::BadLength));
}

#[test]
fn at_the_same_cost_the_shorter_stock_is_opened_and_ends_stay_long() {
    // Offcuts cost nothing: the piece comes from the one that leaves least.
    let offcuts = [stock(1500.0, Some(1), 0), stock(1000.0, Some(1), 0), stock(2440.0, None, 10)];
    let plan = planned(&job(&offcuts, &[piece(900.0, 1)], 0.0)).unwrap();
    assert_eq!((plan.strands[0].stock, plan.is_shortest), (1, true));
    // Two of 600 and two of 300 from two strands of 1200: one strand can stay half whole.
    let plan = planned(&job(&[stock(1200.0, None, 1)], &[piece(600.0, 2), piece(300.0, 2)], 0.0)).unwrap();
    let longest = plan.strands.iter().map(|strand| strand.left.to_mm()).fold(0.0, f64::max);
    assert!((longest - 600.0).abs() < 1e-9, "{plan:?}");
}

#[test]
fn sixty_fourths_of_an_inch_fit_exactly() {
    let inch = |inches: f64| inches * 25.4;
    let plan =
        planned(&job(&[stock(inch(63.0 + 63.0 / 64.0), None, 1)], &[piece(inch(1.0 / 64.0), 4095)], 0.0));
    assert_eq!(plan.unwrap().cost, 1);
}

#[test]
fn whoever_watches_may_stop_it_and_keeps_a_plan_with_its_bound() {
    let pieces: Vec<Piece> = (0..12).map(|at| piece(310.0 + 37.0 * f64::from(at), 7)).collect();
    let job = job(&[stock(2440.0, None, 10), stock(1830.0, None, 7)], &pieces, 3.0);
    let plan = solve(&job, &mut |_| ControlFlow::Break(())).unwrap();
    assert!(!plan.is_proven() && plan.bound < plan.cost);
    assert_eq!(plan.strands.iter().map(|strand| strand.pieces.len()).sum::<usize>(), 84);
}
