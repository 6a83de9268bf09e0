"""What the disk edition says where the words of the pages speak of a signal or a server."""

from calc.messages import message
from site_assets.build.batch import STATE_WORDS
from site_assets.build.state_words import START_WORDS

UNPACK = message("Unpack the whole zip again into a new, empty folder and open start-here.html there.")
# What stands in pages, and what stands there on a disk.
DISK_WORDS = (
    (START_WORDS["late"], message("The calculator has not started. Nothing you entered is lost. Try again.")),
    (
        START_WORDS["failed"],
        message("The calculator could not start. Nothing you entered is lost. Try again. {unpack}", unpack=UNPACK),
    ),
    (
        START_WORDS["gone"],
        message("This folder holds two versions of the handbook, so nothing is calculated. {unpack}", unpack=UNPACK),
    ),
    (
        STATE_WORDS["gone"],
        message(
            "This folder holds two versions of the handbook, so nothing is calculated. Copy your rows or save them as "
            "a file. {unpack}",
            unpack=UNPACK,
        ),
    ),
)
