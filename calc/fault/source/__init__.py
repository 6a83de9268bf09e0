"""What feeds a fault, the run to it, and the currents of each kind of fault."""
