//! How much of the machine a worker may take.

/// The most memory, in bytes. The largest basket that is drawn takes a quarter of it.
#[cfg(unix)]
const MEMORY: u64 = 1024 * 1024 * 1024;

/// Limits this process. What goes beyond ends it, and the server goes on. Where a system knows no such
/// limit, work still stands apart from the server and ends alone.
pub(super) fn set() {
    #[cfg(unix)]
    {
        use rustix::process::{Resource, Rlimit, setrlimit};
        let most = |most| Rlimit { current: Some(most), maximum: Some(most) };
        // Memory that may be written to, and not addresses that are only set apart: threads set apart much.
        let _ = setrlimit(Resource::Data, most(MEMORY));
        // What went wrong is told; a dump of a gigabyte in the maker's folder helps nobody.
        let _ = setrlimit(Resource::Core, most(0));
    }
}
