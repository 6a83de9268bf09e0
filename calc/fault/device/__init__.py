"""Whether an overcurrent device opens on a fault, and how long it may take."""
