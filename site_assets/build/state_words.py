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
    "portal": message(
        "The calculator could not start: this network sent a page of its own instead. Nothing you entered is lost. "
        "Open any other web page, sign in to the network, then try again."
    ),
    "gone": message(
        "The server no longer has the calculator for this page: it may have a newer version. Nothing you entered is "
        "lost: it comes along when you reload the page. If you see “Update now” at the bottom of the page, press that "
        "first."
    ),
    "unsupported": message(
        "This browser has no WebAssembly, or it is turned off, so nothing can be calculated here. Reading, search, "
        "drawings and printing work. Open this page in another browser, or turn it on."
    ),
    "again": message("Try again"),
    "reload": message("Reload the page"),
}
