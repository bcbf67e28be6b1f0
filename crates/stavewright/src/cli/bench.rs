//! `stavewright bench`.

use std::fmt::Write;
use std::net::{IpAddr, Ipv4Addr, SocketAddr};
use std::path::{Path, PathBuf};
use std::time::Duration;

use super::outcome::Outcome;
use super::reading::shelved;
use crate::bench::{self, Access, Bench, Door, Folder, Materials, Refusal};
use crate::failure::Failure;
use crate::screen;

/// Open the bench: a page on this machine where a basket is designed by looking.
///
/// The page shows form, picture, findings and cuts of a pattern, all of them live, and saves patterns
/// into the folder. It is served by this program, works without a network, and nobody else can reach
/// it, unless it is opened to the studio.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright bench                      the patterns of this folder
  stavewright bench patterns             those of another one
  stavewright bench harbour.toml         open this one first
  stavewright bench --shelf shelf.toml   with your own materials
  stavewright bench --studio             let tablets in the room look on

It runs until it is stopped with Ctrl-C. Exit status: 0 when it was stopped,
2 when the folder or the port cannot be used.")]
pub(super) struct Args {
    /// The folder with the patterns, or a pattern to open first.
    #[arg(default_value = ".")]
    folder: PathBuf,

    /// A file with your own materials; they stand before the catalogue's.
    #[arg(long, value_name = "FILE")]
    shelf: Option<PathBuf>,

    /// The port to listen on [default: one that is free].
    #[arg(long, default_value_t = 0, hide_default_value = true)]
    port: u16,

    /// Do not open the page in a browser.
    #[arg(long)]
    no_open: bool,

    /// Open the bench to the local network, to those who have its token; they may look and try, but
    /// not save.
    #[arg(long)]
    studio: bool,

    /// The same, and let them save.
    #[arg(long)]
    studio_write: bool,
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let place = place(&args.folder)?;
    let (catalogue, shelf) = shelved(args.shelf.as_deref())?;
    let materials = Materials { catalogue, shelf };
    let runtime = tokio::runtime::Builder::new_multi_thread()
        .enable_all()
        .build()
        .map_err(|error| Failure::plain(format!("the server cannot be started: {error}"), ""))?;
    let served = runtime.block_on(serve(args, place, materials));
    // Whatever is still being worked out is for nobody.
    runtime.shutdown_timeout(Duration::from_millis(200));
    served.map(|()| Outcome::Fine)
}

/// A folder, and the name of the pattern in it that was asked for.
type Place = (Folder, Option<String>);

fn place(path: &Path) -> Result<Place, Failure> {
    let cannot = |error: std::io::Error| {
        let message = format!("{}: this folder cannot be used: {error}", path.display());
        Failure::plain(message, "Name a folder with patterns, or a pattern.")
    };
    if path.is_file() {
        let is_pattern = path.extension().is_some_and(|ending| ending == "toml");
        let name = path.file_stem().and_then(|name| name.to_str()).filter(|_| is_pattern);
        let Some(name) = name else {
            let message = format!("{}: this is not a pattern", path.display());
            return Err(Failure::plain(message, "The name of a pattern ends in .toml."));
        };
        let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
        return Ok((Folder::at(folder).map_err(cannot)?, Some(name.to_owned())));
    }
    Ok((Folder::at(path).map_err(cannot)?, None))
}

async fn serve(args: &Args, place: Place, materials: Materials) -> Result<(), Failure> {
    let studio = args.studio || args.studio_write;
    let (listener, address) = bench::listen(studio, args.port).await.map_err(|error| {
        let message = format!("port {} cannot be used: {error}", args.port);
        Failure::plain(message, "Leave --port out to take one that is free.")
    })?;
    let door = if studio { Some(Door::new().map_err(|refusal| told(&refusal))?) } else { None };
    let may_write = !studio || args.studio_write;
    let token = door.as_ref().map(|door| door.token.as_str());
    screen::print(&greeting(&place.0, address, token, may_write))?;
    // Others on this machine can read what a browser is started with: it gets a link that holds once.
    let link = door.as_ref().map(Door::link).transpose().map_err(|refusal| told(&refusal))?;
    let here = url(Ipv4Addr::LOCALHOST.into(), address, link.as_deref());
    let started = bench::random_text().map_err(|refusal| told(&refusal))?;
    let bench = Bench::new(place, materials, Access { address, door, may_write }, started);
    if !args.no_open && open::that_detached(&here).is_err() {
        screen::tell("No browser could be opened; open the address yourself.\n");
    }
    let stop = async {
        if tokio::signal::ctrl_c().await.is_err() {
            std::future::pending::<()>().await;
        }
    };
    bench::serve(listener, bench, stop)
        .await
        .map_err(|error| Failure::plain(format!("the server stopped: {error}"), "Start it again."))
}

fn told(refusal: &Refusal) -> Failure {
    Failure::plain(refusal.fault().what.clone(), "")
}

fn url(host: IpAddr, address: SocketAddr, token: Option<&str>) -> String {
    let end = token.map(|token| format!("?token={token}")).unwrap_or_default();
    format!("http://{}/{end}", SocketAddr::new(host, address.port()))
}

/// What stands on the terminal: where the page is, and how it is left.
fn greeting(folder: &Folder, address: SocketAddr, token: Option<&str>, may_write: bool) -> String {
    let here = url(Ipv4Addr::LOCALHOST.into(), address, token);
    let mut said = format!("The bench over {}\n  {here}\n", folder.path().display());
    if let Some(token) = token {
        let there = bench::own_address().map(|host| url(host, address, Some(token)));
        let may = if may_write {
            "Others may look, try and save."
        } else {
            "Others may look and try, but not save."
        };
        match there {
            Some(there) => {
                let square = bench::square(&there).unwrap_or_default();
                let _ = write!(said, "For other machines in this network:\n  {there}\n{square}\n");
            }
            None => said.push_str("This machine is in no network that others could reach it by.\n"),
        }
        let _ = writeln!(said, "{may} Whoever has the token gets in: show it only in the room.");
    }
    said.push_str("Ctrl-C stops it.\n");
    said
}
