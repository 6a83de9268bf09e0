"""What a page says while Python starts; the scripts show these words and have none of their own."""

from calc.messages import message

START_WORDS = {
    "loading": message("The calculator is starting: {percent} %.", percent="{percent}"),
    "ready": message("The calculator is ready."),
    "late": message(
        "The calculator has not started. Nothing you entered is lost. Try again where the signal is better."
    ),
    "failed": message(
        "The calculator could not start. Nothing you entered is lost. Try again where the signal is better."
    ),
    "gone": message(
        "The server no longer has the calculator of this page: it may hold a newer version. Nothing you entered is "
        "lost: it goes along when you load the page again. If “Update now” stands at the foot of the page, press that "
        "first."
    ),
    "unsupported": message(
        "This browser has no WebAssembly, or it is switched off, so nothing can be worked out here. Reading, the "
        "search, the drawings and printing work. Open this page in another browser, or switch it on."
    ),
    "again": message("Try again"),
    "reload": message("Load the page again"),
}
