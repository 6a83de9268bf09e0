"""Which metal raceway or cable may be the way back for a fault."""
