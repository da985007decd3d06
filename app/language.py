"""The language of the window: chosen once, installed in the application, and asked for by the views.

It hangs on the application object, as Qt's own translators do. Where none was installed, as on the command
line and in a window that speaks English, everything is said as it stands in the sources.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QObject, QTranslator

from analysis.wording import ENGLISH, Language
from app.translations.catalogue import TONGUES, catalogue_path, language_of, read_messages, translated

SYSTEM = "system"
"""The setting that follows the desktop."""


class Interpreter(QTranslator):
    """Qt's translator over one of our catalogues, read as it stands.

    Parameters
    ----------
    code : str
        A key of `TONGUES`, and not English.
    parent : QObject
        The application.
    """

    def __init__(self, code: str, parent: QObject) -> None:
        super().__init__(parent)
        self._texts = _texts(code)
        self.speaks = language_of(code, self._texts)

    def isEmpty(self) -> bool:  # noqa: N802 - QTranslator's own name
        """Qt asks before it installs a translator."""
        return not self._texts

    def translate(
        self, context: str, source: str, disambiguation: str | None = None, n: int = -1
    ) -> str | None:
        """The translation, or None, which Qt takes for "ask the next one"."""
        return self._texts.get((context, source))


@cache
def _texts(code: str) -> dict[tuple[str, str], str]:
    """Of a catalogue, read once: that takes a tenth of a second."""
    return translated(read_messages(catalogue_path(code)))


def read_language(setting: str) -> None:
    """Have the texts of a language at hand, so that installing it holds nobody up; as in `wanted_code`."""
    code = wanted_code(setting, desktop_languages())
    if code != ENGLISH.code:
        _texts(code)


def wanted_code(setting: str, desktop: Sequence[str]) -> str:
    """The language to speak.

    Parameters
    ----------
    setting : str
        `SYSTEM`, or a key of `TONGUES`.
    desktop : sequence of str
        The desktop's languages, most wanted first: ``"de-AT"``.

    Returns
    -------
    str
        A key of `TONGUES`; English where the desktop wants none that is spoken here.
    """
    if setting in TONGUES:
        return setting
    spoken = (tag.replace("_", "-").partition("-")[0].lower() for tag in desktop)
    return next((code for code in spoken if code in TONGUES), ENGLISH.code)


def desktop_languages() -> tuple[str, ...]:
    """The desktop's languages, most wanted first."""
    return tuple(QLocale.system().uiLanguages())


def install_language(application: QCoreApplication, setting: str) -> None:
    """Speak a language from now on: our texts, Qt's own dialogs and keys, and numbers.

    What is already on the screen stays as it is; a window is built after this.

    Parameters
    ----------
    application : QCoreApplication
        What the translators are installed in; those installed before are removed.
    setting : str
        As in `wanted_code`.
    """
    for old in application.findChildren(QTranslator):
        application.removeTranslator(old)
        old.setParent(None)
    code = wanted_code(setting, desktop_languages())
    QLocale.setDefault(_locale(code))
    if code == ENGLISH.code:
        return
    of_qt = QTranslator(application)
    if of_qt.load(f"qtbase_{code}", QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)):
        application.installTranslator(of_qt)
    application.installTranslator(Interpreter(code, application))


def window_language() -> Language:
    """The language that was installed; English where none was."""
    application = QCoreApplication.instance()
    found = application.findChild(Interpreter) if application is not None else None
    return found.speaks if isinstance(found, Interpreter) else ENGLISH


def said(text: str) -> str:
    """A sentence of the analysis in the window's language; other people's words as they are."""
    return window_language().say(text)


def _locale(code: str) -> QLocale:
    """The desktop's own locale where it speaks this language, with its region's habits."""
    system = QLocale.system()
    return system if system.name().startswith(f"{code}_") else QLocale(code)
