"""The plain way to plot the same week: pyplot, a new figure a chart, everybody's first draft."""

from io import BytesIO

import matplotlib as mpl

mpl.use("Agg")

import matplotlib.pyplot as plt

from bot.picture import Joint, Judged, Picture, Role

HEIGHT_OF_ROW = 94
HEAD = 300


def plot(picture: Picture) -> bytes:
    """The week as a PNG 1,080 pixels wide: the same rows, marks, numbers, words and goals."""
    rows = picture.rows
    height = max(HEAD + HEIGHT_OF_ROW * len(rows), 810)
    figure, axes = plt.subplots(figsize=(10.8, height / 100), dpi=100)
    goals = picture.goals
    if goals is not None:
        axes.axvspan(goals.before_low, goals.before_high, color="#E3EDE7")
        axes.axvline(goals.before_low, color="grey", linewidth=1)
        axes.axvline(goals.before_high, color="grey", linewidth=1)
        axes.axvline(goals.after_high, color="grey", linestyle="--")
        axes.text(goals.before_high, -1, goals.before_word, ha="right", fontsize=21)
        axes.text(goals.after_high, -1.4, goals.after_word, fontsize=21)
    for number, row in enumerate(rows):
        marks = [mark for mark in row.marks if mark.at is not None]
        xs = [mark.at for mark in marks]
        if row.joint is not Joint.NONE:
            style = "-" if row.joint is Joint.COUNTED else "--"
            axes.plot(xs, [number] * len(xs), style, color="teal", linewidth=5)
        for mark in marks:
            marker = "D" if mark.judged is Judged.OUTSIDE else "o"
            face = "teal" if mark.role is Role.AFTER else "white"
            axes.plot([mark.at], [number], marker, color="teal", mfc=face, markersize=16)
            weight = "bold" if mark.role is Role.AFTER else "normal"
            axes.text(mark.at, number, f"  {mark.word}", fontsize=22, fontweight=weight)
        if row.note:
            axes.text(250, number + 0.4, row.note, ha="right", fontsize=21)
    axes.set_yticks(
        range(len(rows)), [f"{row.day} {row.name}\n{row.detail}" for row in rows], fontsize=22
    )
    axes.invert_yaxis()
    axes.set_title(f"{picture.title} ({picture.unit})", fontsize=33)
    legend = picture.legend
    axes.plot([], [], "o", color="teal", mfc="white", label=legend.before)
    axes.plot([], [], "o", color="teal", label=legend.after)
    axes.plot([], [], "D", color="teal", label=legend.outside)
    axes.legend(fontsize=21)
    figure.subplots_adjust(left=0.45)
    png = BytesIO()
    figure.savefig(png, format="png")
    plt.close(figure)
    return png.getvalue()
