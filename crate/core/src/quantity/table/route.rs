//! What a tube passes on its way: corners, points, coils.

use super::super::{Quantity, choice, group, number};

rows! {
    /// A run's stations.
    ROUTE = group("/runs/*/route", "Route",
        "What the tube passes between its ports, in order; left empty, it takes the shortest way.");
    /// A station of a route: a corner.
    CORNER_STATION = group("/runs/*/route/*/corner", "Corner",
        "Two straights that meet in a bend.");
    /// Coordinate of a corner.
    CORNER = number("/runs/*/route/*/corner/*", "Corner", "mm",
        "Where the two straights would meet if the bend were sharp, from your datum.")
        .step(0.5, 30.0);
    /// Port whose coordinate a corner follows.
    CORNER_OF = choice("/runs/*/route/*/corner/*/of", "Follows port", "port", None,
        "The port whose same coordinate this one follows, so that a new measurement carries the corner along.");
    /// Offset from that port.
    CORNER_PLUS = number("/runs/*/route/*/corner/*/plus", "plus", "mm",
        "How far beyond that port's coordinate; below zero is the other way.")
        .step(0.5, 0.0).or(0.0);
    /// A station of a route: a point passed through.
    THROUGH_STATION = group("/runs/*/route/*/through", "Point",
        "A point that the middle of the tube passes smoothly.");
    /// Coordinate of a point passed through.
    THROUGH = number("/runs/*/route/*/through/*", "Point", "mm",
        "A point that the middle of the tube passes smoothly; points that follow each other make one curve.")
        .step(0.5, 30.0);
    /// Port whose coordinate a point follows.
    THROUGH_OF = choice("/runs/*/route/*/through/*/of", "Follows port", "port", None,
        "The port whose same coordinate this one follows, so that a new measurement carries the point along.");
    /// Offset from that port.
    THROUGH_PLUS = number("/runs/*/route/*/through/*/plus", "plus", "mm",
        "How far beyond that port's coordinate; below zero is the other way.")
        .step(0.5, 0.0).or(0.0);
    /// A station of a route: a coil.
    COIL_STATION = group("/runs/*/route/*/coil", "Coil",
        "The tube goes round an axis, as a screw thread does.");
    /// Coordinate of a coil's centre.
    COIL_CENTRE = number("/runs/*/route/*/coil/centre/*", "Centre", "mm",
        "The point on the coil's axis level with the coil's first point, from your datum.")
        .step(0.5, 30.0);
    /// Port whose coordinate a coil's centre follows.
    COIL_OF = choice("/runs/*/route/*/coil/centre/*/of", "Follows port", "port", None,
        "The port whose same coordinate this one follows, so that a new measurement carries the coil along.");
    /// Offset from that port.
    COIL_PLUS = number("/runs/*/route/*/coil/centre/*/plus", "plus", "mm",
        "How far beyond that port's coordinate; below zero is the other way.")
        .step(0.5, 0.0).or(0.0);
    /// Axis of a coil.
    COIL_AXIS = number("/runs/*/route/*/coil/axis/*", "Axis", "",
        "The direction in which the coil climbs; any length will do, 0, 0, 1 is up.")
        .step(0.1, 1.0);
    /// Radius of a coil.
    COIL_RADIUS = number("/runs/*/route/*/coil/radius", "Coil radius", "mm",
        "From the axis to the middle of the tube where the coil starts; round a reservoir, its radius, the gap you want and half the tube.")
        .above(0.0).to(100_000.0).step(0.5, 40.0);
    /// Radius where a coil ends.
    COIL_END_RADIUS = number("/runs/*/route/*/coil/end_radius", "End radius", "mm",
        "Only where the coil opens or closes: its radius where it ends.")
        .above(0.0).to(100_000.0).step(0.5, 40.0);
    /// Climb of a coil.
    COIL_PITCH = number("/runs/*/route/*/coil/pitch", "Pitch", "mm",
        "How far the coil climbs along its axis in one turn; more than the tube's outer diameter, or turns touch.")
        .from(0.0).to(100_000.0).step(0.5, 20.0);
    /// Turns of a coil.
    COIL_TURNS = number("/runs/*/route/*/coil/turns", "Turns", "",
        "How often it goes round; parts of a turn count, such as 2.25.")
        .from(0.01).to(1_000.0).step(0.25, 2.0);
    /// Hand of a coil.
    COIL_HAND = choice("/runs/*/route/*/coil/hand", "Hand", "hand", Some("right"),
        "Right turns like a common screw as it climbs, left the other way.");
    /// Where a coil starts.
    COIL_START = number("/runs/*/route/*/coil/start_deg", "Start angle", "°",
        "Where the coil starts, about its axis: 0 is towards z, or towards x where the axis is along z.")
        .from(-360.0).to(360.0).step(15.0, 0.0).or(0.0);
    /// Own bend radius of a corner.
    CORNER_BEND_RADIUS = number("/runs/*/route/*/bend_radius", "Own bend radius", "mm",
        "Only where this corner needs another radius than the rest of the run.")
        .from(0.0).to(100_000.0).step(0.5, 24.0);
}
