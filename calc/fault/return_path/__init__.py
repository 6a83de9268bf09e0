"""Out and back of a ground fault, and the longest run that still opens the device."""
