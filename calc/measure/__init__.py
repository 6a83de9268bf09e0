"""Readings taken on site: what a bond's resistance and a current on metal tell, and what they cannot."""
