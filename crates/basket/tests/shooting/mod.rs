//! An integration of geodesics that knows nothing of the program: the equations of Runge and Kutta on any surface.

pub(crate) type Place = [f64; 3];

/// A surface, by one coordinate round it and one up it.
pub(crate) type Surface<'a> = &'a dyn Fn(f64, f64) -> Place;

/// Steps of the integration.
const STEPS: u32 = 400;

fn plus(a: Place, b: Place, times: f64) -> Place {
    [a[0] + b[0] * times, a[1] + b[1] * times, a[2] + b[2] * times]
}

fn dot(a: Place, b: Place) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

fn size(a: Place) -> f64 {
    dot(a, a).sqrt()
}

/// First derivatives round and up, then the second ones: round twice, mixed, up twice.
fn derivatives(surface: Surface<'_>, [u, v]: [f64; 2], [du, dv]: [f64; 2]) -> [Place; 5] {
    let at = |i: f64, j: f64| surface(u + i * du, v + j * dv);
    let here = at(0.0, 0.0);
    let first =
        |ahead: Place, back: Place, step: f64| plus(ahead, back, -1.0).map(|part| part / (2.0 * step));
    let second = |ahead: Place, back: Place, step: f64| {
        plus(plus(ahead, back, 1.0), here, -2.0).map(|part| part / (step * step))
    };
    let mixed = plus(plus(at(1.0, 1.0), at(-1.0, -1.0), 1.0), plus(at(1.0, -1.0), at(-1.0, 1.0), 1.0), -1.0);
    [
        first(at(1.0, 0.0), at(-1.0, 0.0), du),
        first(at(0.0, 1.0), at(0.0, -1.0), dv),
        second(at(1.0, 0.0), at(-1.0, 0.0), du),
        mixed.map(|part| part / (4.0 * du * dv)),
        second(at(0.0, 1.0), at(0.0, -1.0), dv),
    ]
}

/// Change of place and direction on a geodesic: its second derivative is square to the surface.
fn slope(surface: Surface<'_>, [u, v, to_u, to_v]: [f64; 4], near: [f64; 2]) -> [f64; 4] {
    let [xu, xv, xuu, xuv, xvv] = derivatives(surface, [u, v], near);
    let bend = plus(plus(xuu.map(|part| part * to_u * to_u), xuv, 2.0 * to_u * to_v), xvv, to_v * to_v);
    let (e, f, g) = (dot(xu, xu), dot(xu, xv), dot(xv, xv));
    let (p, q) = (dot(bend, xu), dot(bend, xv));
    let whole = e * g - f * f;
    [to_u, to_v, -(p * g - q * f) / whole, -(q * e - p * f) / whole]
}

/// Where the geodesic that begins at `u` and the foot, leaning so far from square to the foot, comes to `top`: its
/// place round, and its lean from the line up the surface there. Runge and Kutta's fourth order, by way up.
pub(crate) fn geodesic(surface: Surface<'_>, u: f64, lean: f64, (top, near): (f64, [f64; 2])) -> [f64; 2] {
    let [xu, xv, ..] = derivatives(surface, [u, 0.0], near);
    // Square to the way round, in the surface.
    let across = plus(xv, xu, -dot(xu, xv) / dot(xu, xu));
    let (sin, cos) = lean.sin_cos();
    let to_v = cos / size(across);
    let to_u = sin / size(xu) - to_v * dot(xu, xv) / dot(xu, xu);
    let mut state = [u, 0.0, to_u, to_v];
    let step = top / f64::from(STEPS);
    let by_v = |state: [f64; 4]| {
        let slope = slope(surface, state, near);
        slope.map(|part| part / slope[1])
    };
    let moved = |state: [f64; 4], by: [f64; 4], times: f64| {
        [0, 1, 2, 3].map(|part: usize| state[part] + by[part] * times)
    };
    for _ in 0..STEPS {
        let a = by_v(state);
        let b = by_v(moved(state, a, step / 2.0));
        let c = by_v(moved(state, b, step / 2.0));
        let d = by_v(moved(state, c, step));
        state = [0, 1, 2, 3].map(|part: usize| {
            state[part] + step / 6.0 * (a[part] + 2.0 * b[part] + 2.0 * c[part] + d[part])
        });
    }
    let [u, v, to_u, to_v] = state;
    let [xu, xv, ..] = derivatives(surface, [u, v], near);
    let way = plus(xu.map(|part| part * to_u), xv, to_v);
    [u, (dot(way, xv) / size(way) / size(xv)).clamp(-1.0, 1.0).acos()]
}
