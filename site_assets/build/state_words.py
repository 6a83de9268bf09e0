"""What a page says while Python starts; the scripts show these words and have none of their own."""

from calc.words import say

START_WORDS = {
    "loading": say("The calculator is starting: {percent} %.", percent="{percent}"),
    "ready": say("The calculator is ready."),
    "late": say("The calculator has not started. Nothing you entered is lost. Try again where the signal is better."),
    "failed": say("The calculator could not start. Nothing you entered is lost. Try again where the signal is better."),
    "gone": say(
        "The server no longer has the calculator of this page: it may hold a newer version. Nothing you entered is lost: "
        "it goes along when you load the page again. If “Update now” stands at the foot of the page, press that first."
    ),
    "unsupported": say(
        "This browser has no WebAssembly, or it is switched off, so nothing can be worked out here. Reading, the search, "
        "the drawings and printing work. Open this page in another browser, or switch it on."
    ),
    "again": say("Try again"),
    "reload": say("Load the page again"),
}
