//! What the plots say, in one place.

use crate::tongue::worded;

worded! {
    FLOW_AXIS: &str = "Flow, L/h";
    PRESSURE_AXIS: &str = "Pressure, kPa";
    SHARE_AXIS: &str = "Share of the limit used, %";
    TEMPERATURE_AXIS: &str = "Temperature, °C";
    LIMIT: &str = "limit";
    OVER: &str = "OVER";
    MAY_BE_OVER: &str = "may be over";
    NOTHING: &str = "Nothing to show yet";
    STIFF: &str = "stiff: up to the allowed temperature";
    SOFT: &str = "above it, or not known";
    TOO_WARM: &str = "OVER: warmer than allowed";
    STATED: &str = "stated {0} L/h";
    FLOW_AND_PRESSURE: &str = "{0} L/h, {1} kPa";
    WITH_RANGE: &str = "{0}, hatched: its range";

    /// The text alternatives, in whole sentences.
    LOSS_IS: &str = "{0}: pressure in kPa against flow in L/h.";
    LOOP: &str = "Loop {0}: {1}.";
    RANGE: &str = "Its range: {0}.";
    PUMP: &str = "Pump {0}: {1}.";
    PRESSURE_AT: &str = "{0} kPa at {1} L/h";
    PRESSURES_AT: &str = "{0} to {1} kPa at {2} L/h";
    OPERATING: &str = "Operating point: {0} L/h at {1} kPa";
    OPERATING_FLOWS: &str = "; flow {0} to {1} L/h";
    OPERATING_PRESSURES: &str = "; pressure {0} to {1} kPa";
    STATED_FLOW: &str = "Stated flow: {0} L/h";
    NO_POINTS: &str = "no points";
    PICKED: &str = "{0} ({1} of {2} points)";
    NO_NUMBER: &str = "not a number";

    MARGINS_ARE: &str = "{0}: share of each limit that is used.";
    NONE_OVER: &str = "None of {0} is over its limit.";
    ONE_OVER: &str = "1 of {0} is over its limit.";
    MORE_OVER: &str = "{0} of {1} are over their limits.";
    BETWEEN: &str = "({0} to {1})";

    STIFFNESS_IS: &str = "{0}: temperatures in °C.";
    OWN: &str = "{0}, the design's material: {1}.";
    AT_OVER: &str = "At {0} OVER by {1} °C";
    AT_WITHIN: &str = "At {0} {1} °C in reserve";
    ALLOWED: &str = "allowed up to {0} °C";
    ALLOWED_UNKNOWN: &str = "no allowed temperature known";
    MARK_AT: &str = "{0} at {1} °C";
    DEFLECTS_LOW: &str = "deflects under 0.45 MPa";
    DEFLECTS_HIGH: &str = "deflects under 1.80 MPa";
    GLASS: &str = "glass transition";
    OVER_AT: &str = "at {0} by {1} °C";
    RESERVE_AT: &str = "{0} °C in reserve at {1}";
}
