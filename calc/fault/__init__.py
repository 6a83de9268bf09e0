"""What a fault does: the current, the device that opens, the voltage on each metal part."""
