//! The worker's own side: takes one order after the other until the server is gone.

use std::io::{self, Write};
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::Path;
use std::sync::mpsc;

use basket::Catalogue;

use super::order::{Order, Task, Word};
use super::{frame, limits, tasks};
use crate::bench::compute::Shop;
use crate::bench::folder::Folder;
use crate::bench::refusal::Refusal;

/// Works until the server closes the line, be it in the middle of an order.
pub(crate) fn serve() -> io::Result<()> {
    limits::set();
    let mut line = io::stdin();
    let ((), shelf) = frame::read(&mut line)?;
    let catalogue = shelved(&String::from_utf8_lossy(&shelf));
    let folder = Folder::at(Path::new("."))?;
    let (told, orders) = mpsc::channel::<(Order, Vec<u8>)>();
    std::thread::spawn(move || {
        while let Ok(order) = frame::read(&mut line) {
            if told.send(order).is_err() {
                break;
            }
        }
        std::process::exit(0);
    });
    let mut out = io::stdout().lock();
    for (order, request) in orders {
        let catalogue = order.own.catalogue(&catalogue);
        let shop = Shop { folder: &folder, catalogue: &catalogue, own: &order.own, any_file: order.any_file };
        obey(order.task, &request, shop, &mut out)?;
    }
    Ok(())
}

/// The catalogue with the maker's own materials; the server has read them already.
fn shelved(shelf: &str) -> Catalogue {
    let built_in = Catalogue::built_in();
    if shelf.is_empty() {
        return built_in.clone();
    }
    built_in.with_shelf(shelf).unwrap_or_else(|_| built_in.clone())
}

fn obey(task: Task, request: &[u8], shop: Shop<'_>, out: &mut impl Write) -> io::Result<()> {
    let mut broken = Ok(());
    let mut say = |word: Word, body: &[u8]| {
        if broken.is_ok() {
            broken = frame::write(out, &word, body);
        }
    };
    let done = catch_unwind(AssertUnwindSafe(|| tasks::answer(task, request, shop, &mut say)));
    let (status, media, body) = match done.unwrap_or_else(|_| Err(Refusal::broken())) {
        Ok((media, body)) => (200, media, body),
        Err(refusal) => (refusal.status().as_u16(), "application/json", serde_json::to_vec(refusal.fault())?),
    };
    broken?;
    frame::write(out, &Word::Answer { status, media: media.to_owned() }, &body)
}
