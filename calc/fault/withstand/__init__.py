"""Whether a bonding jumper survives a fault until the device opens."""
