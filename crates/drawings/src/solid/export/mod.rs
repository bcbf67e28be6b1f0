//! Files of solids: GLB, STL and 3MF.

mod glb;
mod stl;
mod three_mf;

pub use glb::glb;
pub use stl::stl;
pub use three_mf::three_mf;
