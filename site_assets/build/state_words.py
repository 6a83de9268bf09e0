"""What a page says while Python starts; the scripts show these words and have none of their own."""

from calc.words import say

START_WORDS = {
    "loading": say("The calculator is starting: {percent} %.", percent="{percent}"),
    "ready": say("The calculator is ready."),
    "late": say("The calculator has not started. Nothing you entered is lost. Try again where the signal is better."),
    "failed": say("The calculator could not start. Nothing you entered is lost. Try again where the signal is better."),
    "again": say("Try again"),
}
