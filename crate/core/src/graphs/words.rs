//! What stands in the plots about a design, in one place.

use crate::tongue::worded;

worded! {
    LOSS: &str = "Pressure loss against flow";
    TUBES: &str = "Tubes";
    TUBES_AND_PARTS: &str = "Tubes and parts";

    MARGINS: &str = "Margins";
    HEAT: &str = "Heat";
    PUMP: &str = "Flow that the pump drives";
    PRESSURE: &str = "{0}: pressure";
    TIGHT: &str = "{0}: tight wall";
    LOSS_OF: &str = "{0}: loss";
    RING: &str = "{0}: ring at {1}";
    OF: &str = "{0} of {1}";
    MAY_BE: &str = "{0}; {1} to {2} may be";

    STIFFNESS: &str = "Temperature against stiffness";
    /// The temperatures that a tube meets.
    FITTED: &str = "fitted";
    WORKING: &str = "working";
    FAULT: &str = "fault";
}
