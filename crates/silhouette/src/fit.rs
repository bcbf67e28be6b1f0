//! Least squares.

/// Solves six equations for three right sides, which stand in the last three columns; by elimination with the
/// largest pivot. Where they do not decide, the undecided weights are nothing.
pub(crate) fn solved(mut rows: [[f64; 9]; 6]) -> [[f64; 6]; 3] {
    for column in 0..6 {
        let pivot = (column..6).max_by(|a, b| rows[*a][column].abs().total_cmp(&rows[*b][column].abs()));
        rows.swap(column, pivot.unwrap_or(column));
        let lead = rows[column];
        if lead[column].abs() < 1e-12 {
            continue;
        }
        for (number, row) in rows.iter_mut().enumerate() {
            if number != column {
                let share = row[column] / lead[column];
                row.iter_mut().zip(lead).for_each(|(value, of)| *value -= share * of);
            }
        }
    }
    let weight = |side: usize, row: usize| {
        if rows[row][row].abs() < 1e-12 { 0.0 } else { rows[row][6 + side] / rows[row][row] }
    };
    [0, 1, 2].map(|side| [0, 1, 2, 3, 4, 5].map(|row| weight(side, row)))
}

/// Value and slope at `at` of the parabola that lies nearest to places, those near it counting most; none where
/// fewer than three places are near. `reach` is how far near is.
pub(crate) fn parabola(places: &[[f64; 2]], at: f64, reach: f64) -> Option<[f64; 2]> {
    let from = places.partition_point(|[x, _]| *x < at - reach);
    let near = places.iter().skip(from).take_while(|[x, _]| *x <= at + reach);
    let mut sums = [[0.0; 4]; 3];
    let mut count = 0;
    for [x, y] in near {
        let off = (x - at) / reach;
        let weight = (1.0 - off * off).max(0.0);
        let terms = [1.0, off, off * off];
        for (row, term) in sums.iter_mut().zip(terms) {
            for (sum, other) in row.iter_mut().zip([1.0, off, off * off, *y]) {
                *sum += weight * term * other;
            }
        }
        count += 1;
    }
    if count < 3 {
        return None;
    }
    for column in 0..3 {
        let lead = sums[column];
        if lead[column].abs() < 1e-12 {
            return None;
        }
        for (number, row) in sums.iter_mut().enumerate() {
            if number != column {
                let share = row[column] / lead[column];
                row.iter_mut().zip(lead).for_each(|(value, of)| *value -= share * of);
            }
        }
    }
    Some([sums[0][3] / sums[0][0], sums[1][3] / sums[1][1] / reach])
}

/// Places between which the middle line of many is looked for.
const MOST_PLACES: usize = 101;

/// How many times as near most places have to lie to the middle line as to the nearest one, so that the nearest one
/// is taken for turned by what stands out.
const TURNED: f64 = 2.0;

/// The line `a + b·x` nearest to places, those that stray far left out the second time. What stands out on one side,
/// in fewer than half of the places, does not turn it.
pub(crate) fn line(places: &[[f64; 2]]) -> [f64; 2] {
    let stray = |[start, slope]: [f64; 2], [x, y]: &[f64; 2]| (y - start - slope * x).abs();
    let usual = |line: [f64; 2]| median(places.iter().map(|place| stray(line, place)));
    let (all, middle) = (nearest(places.iter()), middle_line(places));
    let first = if usual(middle) * TURNED < usual(all) { middle } else { all };
    let most = 3.0 * usual(first) + 1e-9;
    nearest(places.iter().filter(|place| stray(first, place) <= most))
}

/// The line of least squares.
fn nearest<'a>(places: impl Iterator<Item = &'a [f64; 2]> + Clone) -> [f64; 2] {
    let count = places.clone().count().max(1) as f64;
    let mean = [0, 1].map(|axis: usize| places.clone().map(|place| place[axis]).sum::<f64>() / count);
    let [xx, xy] = places.fold([0.0; 2], |[xx, xy], [x, y]| {
        let off = x - mean[0];
        [xx + off * off, xy + off * (y - mean[1])]
    });
    let slope = if xx > 0.0 { xy / xx } else { 0.0 };
    [mean[1] - slope * mean[0], slope]
}

/// The line whose slope is the median, over all places, of the median slope to all others (A. F. Siegel, "Robust
/// Regression Using Repeated Medians", Biometrika 69 (1982), pp. 242–244).
fn middle_line(places: &[[f64; 2]]) -> [f64; 2] {
    let few: Vec<[f64; 2]> =
        places.iter().step_by(places.len().div_ceil(MOST_PLACES).max(1)).copied().collect();
    let slopes = few.iter().map(|[x, y]| {
        let others = few.iter().filter(|[other, _]| (other - x).abs() > 0.0);
        median(others.map(|[other_x, other_y]| (other_y - y) / (other_x - x)))
    });
    let slope = median(slopes);
    [median(few.iter().map(|[x, y]| y - slope * x)), slope]
}

fn median(values: impl Iterator<Item = f64>) -> f64 {
    let mut values: Vec<f64> = values.collect();
    values.sort_by(f64::total_cmp);
    values.get(values.len() / 2).copied().unwrap_or(0.0)
}

#[cfg(test)]
mod tests {
    use super::line;

    #[test]
    fn what_stands_out_in_fewer_than_half_of_the_places_does_not_turn_a_line() {
        for [from, to] in [[0, 80], [40, 120], [120, 200]] {
            let place = |number: i32| {
                let x = f64::from(number);
                let out = if (from..to).contains(&number) { 60.0 } else { 0.0 };
                [x, 5.0 + 0.03 * x + out]
            };
            let places: Vec<[f64; 2]> = (0..200).map(place).collect();
            let [start, slope] = line(&places);
            assert!((start - 5.0).abs() < 1e-9 && (slope - 0.03).abs() < 1e-9, "{from}: {start} {slope}");
        }
    }

    #[test]
    fn few_places_make_no_line_that_is_not_finite() {
        for places in [&[][..], &[[1.0, 2.0]], &[[1.0, 2.0], [1.0, 3.0]]] {
            assert!(line(places).iter().all(|part| part.is_finite()), "{places:?}");
        }
    }
}
