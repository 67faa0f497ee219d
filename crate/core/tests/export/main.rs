//! The files: their bytes, names and archives, the pack, the coupon, and what a print service asks of them.

mod accept;
mod archives;
mod coupon_files;
mod coupon_fit;
mod drawing;
mod languages;
mod names;
mod pack;
mod shapes;
mod solidity;
mod stl;
