//! How the pieces of a cut run are joined.

use super::super::{Quantity, number};

rows! {
    /// Length of a spigot.
    JOINT_LENGTH = number("/process/joint/length", "Joint length", "mm",
        "How far one piece goes into the next; two thirds of the outer diameter is common practice, no source.")
        .from(2.0).to(200.0).step(0.5, 8.0).or(8.0);
    /// Gap for the adhesive.
    JOINT_CLEARANCE = number("/process/joint/clearance", "Glue gap", "mm",
        "Gap for the adhesive on every side of the spigot: 0.05 to 0.2 is common practice, no source. See the adhesive's data sheet.")
        .from(0.02).to(2.0).step(0.01, 0.1).or(0.1);
    /// Wall of a socket.
    JOINT_WALL = number("/process/joint/wall", "Least socket wall", "mm",
        "Wall of the socket round the spigot; never less than the tube's own or the printer's least.")
        .from(0.3).to(50.0).step(0.1, 1.5).or(1.5);
    /// How far a key stands out.
    JOINT_KEY = number("/process/joint/key_depth", "Key height", "mm",
        "How far the spigot is out of round, so that it goes in one way only; 0 leaves it round.")
        .from(0.0).to(5.0).step(0.1, 0.5).or(0.5);
    /// Strength of the bond.
    JOINT_BOND = number("/process/joint/bond_mpa", "Bond strength", "MPa",
        "Shear strength of the adhesive on this plastic, from its data sheet; halve it for warm water. 5 is from memory, unverified.")
        .above(0.0).to(200.0).step(0.5, 5.0).or(5.0);
}
