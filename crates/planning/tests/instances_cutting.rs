//! Cutting against optima that others proved.

use std::ops::ControlFlow;

use basket::Length;
use planning::cutting::{Job, Piece, Plan, Stock, solve};
use serde::Deserialize;

/// The instances that lie in this project, or the file that the environment names.
fn text() -> String {
    let own = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/data/instances.json").to_owned();
    let path = std::env::var("STAVEWRIGHT_INSTANCES").unwrap_or(own);
    std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{path}: {error}"))
}

#[derive(Deserialize)]
struct Instances {
    cutting: Vec<Instance>,
}

#[derive(Deserialize)]
struct Instance {
    name: String,
    kerf_mm: f64,
    stocks: Vec<InstanceStock>,
    pieces: Vec<InstancePiece>,
    optimum_cost: u64,
}

#[derive(Deserialize)]
struct InstanceStock {
    length_mm: f64,
    count: Option<u32>,
    cost: u64,
}

#[derive(Deserialize)]
struct InstancePiece {
    length_mm: f64,
    demand: u32,
}

impl Instance {
    fn job(&self) -> Job {
        let stock = |stock: &InstanceStock| Stock {
            length: Length::mm(stock.length_mm),
            count: stock.count,
            cost: stock.cost,
        };
        Job {
            stocks: self.stocks.iter().map(stock).collect(),
            pieces: self.pieces.iter().map(|piece| a_piece(piece.length_mm, piece.demand)).collect(),
            kerf: Length::mm(self.kerf_mm),
        }
    }
}

fn a_piece(mm: f64, count: u32) -> Piece {
    Piece { length: Length::mm(mm), count }
}

fn a_stock(mm: f64, count: Option<u32>, cost: u64) -> Stock {
    Stock { length: Length::mm(mm), count, cost }
}

fn planned(job: &Job) -> Plan {
    let plan = solve(job, &mut |_| ControlFlow::Continue(())).unwrap();
    is_whole(job, &plan);
    plan
}

/// Counts the plan up again from nothing but the job.
fn is_whole(job: &Job, plan: &Plan) {
    let kerf = job.kerf.to_mm();
    for (place, piece) in job.pieces.iter().enumerate() {
        let made = plan.strands.iter().flat_map(|strand| &strand.pieces).filter(|own| **own == place).count();
        assert_eq!(made, piece.count as usize, "pieces {place}");
    }
    for strand in &plan.strands {
        let taken: f64 = strand.pieces.iter().map(|piece| job.pieces[*piece].length.to_mm() + kerf).sum();
        let stock = &job.stocks[strand.stock];
        assert!(taken <= stock.length.to_mm() + kerf + 1e-6, "{strand:?}");
        assert!((strand.left.to_mm() - (stock.length.to_mm() - taken).max(0.0)).abs() < 1e-6, "{strand:?}");
    }
    for (place, stock) in job.stocks.iter().enumerate() {
        assert!(stock.count.is_none_or(|count| plan.opened(place) <= count), "stock {place}");
    }
    let cost: u64 = plan.strands.iter().map(|strand| job.stocks[strand.stock].cost).sum();
    assert_eq!(plan.cost, cost);
}

/// Optima proven by OR-Tools CP-SAT 9.15, an independent solver.
#[test]
fn cutting_instances_are_at_their_proven_optimum() {
    let instances: Instances = serde_json::from_str(&text()).unwrap();
    assert!(!instances.cutting.is_empty());
    for instance in &instances.cutting {
        let plan = planned(&instance.job());
        assert_eq!((plan.cost, plan.is_proven()), (instance.optimum_cost, true), "{}", instance.name);
    }
}

/// Stock 5600 and thirteen lengths: a widely reprinted paper-roll example, 73 rolls.
#[test]
fn cutting_instances_of_paper_rolls() {
    let rolls = [
        (1380.0, 22),
        (1520.0, 25),
        (1560.0, 12),
        (1710.0, 14),
        (1820.0, 18),
        (1880.0, 18),
        (1930.0, 20),
        (2000.0, 10),
        (2050.0, 12),
        (2100.0, 14),
        (2140.0, 16),
        (2150.0, 18),
        (2200.0, 20),
    ];
    let pieces = rolls.iter().map(|(mm, count)| a_piece(*mm, *count)).collect();
    let job = Job { stocks: vec![a_stock(5600.0, None, 1)], pieces, kerf: Length::ZERO };
    let plan = planned(&job);
    assert_eq!((plan.cost, plan.is_proven()), (73, true));
    let sizes: Vec<i64> =
        rolls.iter().flat_map(|(mm, count)| std::iter::repeat_n(*mm as i64, *count as usize)).collect();
    assert_eq!(planning::cutting::strands_by_first_fit(&sizes, 5600), 82);
}

/// The family of D. S. Johnson (1973) on which first fit, longest first, is furthest off.
#[test]
fn cutting_instances_on_which_first_fit_is_worst() {
    let pieces = [(51.0, 6), (27.0, 6), (26.0, 6), (23.0, 12)].map(|(mm, count)| a_piece(mm, count)).to_vec();
    let job = Job { stocks: vec![a_stock(100.0, None, 1)], pieces, kerf: Length::ZERO };
    let plan = planned(&job);
    assert_eq!((plan.cost, plan.is_proven()), (9, true));
    let sizes: Vec<i64> = [(51, 6), (27, 6), (26, 6), (23, 12)]
        .into_iter()
        .flat_map(|(size, count)| std::iter::repeat_n(size, count))
        .collect();
    assert_eq!(planning::cutting::strands_by_first_fit(&sizes, 100), 11);
}

/// Two lengths to buy, two of offcuts that cost nothing, a saw of 3 mm; the optimum by hand and by an
/// independent solver.
#[test]
fn cutting_instances_with_offcuts() {
    let stocks = vec![
        a_stock(2440.0, None, 10),
        a_stock(1830.0, None, 7),
        a_stock(900.0, Some(1), 0),
        a_stock(700.0, Some(2), 0),
    ];
    let pieces = vec![a_piece(620.0, 5), a_piece(455.0, 8), a_piece(310.0, 6)];
    let plan = planned(&Job { stocks, pieces, kerf: Length::mm(3.0) });
    assert_eq!((plan.cost, plan.is_proven()), (28, true));
}
