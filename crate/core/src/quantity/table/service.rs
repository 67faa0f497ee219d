//! What a print service asks for, in the builder's own money.

use super::super::{Quantity, group, number, text};

rows! {
    /// The print service's prices.
    SERVICE = group("/process/service", "Print service",
        "What the service asks for, in your own money, from its offer or its price list. Leave it out where you print yourself.");
    /// Price of its material.
    SERVICE_PRICE = number("/process/service/price_per_cm3", "Price a cm³", "",
        "What a cubic centimetre of the part costs; leave it empty where it is not known.")
        .from(0.0).to(1e6).step(0.05, 0.5);
    /// Price of a piece beside its material.
    SERVICE_SETUP = number("/process/service/setup", "Set-up a piece", "",
        "What is asked for each piece beside its material, such as for handling and cleaning; 0 for none.")
        .from(0.0).to(1e6).step(1.0, 5.0).or(0.0);
    /// Least price of an order.
    SERVICE_MINIMUM = number("/process/service/minimum", "Least order", "",
        "What an order costs at least, however little is in it; 0 for none.")
        .from(0.0).to(1e6).step(5.0, 20.0).or(0.0);
    /// Where the prices come from.
    SERVICE_SOURCE = text("/process/service/source", "Prices from", (0, 2_000), Some(""),
        "Where the prices come from, such as an offer and its date.");
}
