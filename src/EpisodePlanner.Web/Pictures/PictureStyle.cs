namespace EpisodePlanner.Web.Pictures;

/// <summary>The rules that give the classes of a picture their look, over the inks of a theme.</summary>
public static class PictureStyle
{
    /// <summary>The rules with the inks as custom properties of the page: --ink-words, --ink-hands …</summary>
    public const string Rules =
        """
        .picture text,text.p-t{font-family:system-ui,"Noto Sans","DejaVu Sans",sans-serif;fill:var(--ink-words)}
        .p-paper{fill:var(--ink-sheet)}
        .p-closed{fill:var(--ink-closed)}
        .p-rule{stroke:var(--ink-rule);stroke-width:1}
        .p-now{stroke:var(--ink-words);stroke-width:1.5;stroke-dasharray:2 2}
        .p-day{font-size:12px;font-weight:600}
        .p-small,text.p-small{font-size:10px;fill:var(--ink-soft)}
        .p-hands{fill:var(--ink-hands)}
        .p-hands-words,.picture text.p-hands-words{font-size:10px;fill:var(--ink-on-hands)}
        .p-run-ink{fill:var(--ink-run)}
        .p-planned-ink{fill:var(--ink-hands)}
        .p-hatched{stroke:var(--ink-run);stroke-width:1}
        .p-planned{stroke:var(--ink-hands)}
        .p-held{fill:none;stroke:var(--ink-run);stroke-width:1;stroke-dasharray:3 2}
        .p-wait{fill:none;stroke:var(--ink-soft);stroke-width:1;stroke-dasharray:1.5 2}
        .p-chain{stroke:var(--ink-words);stroke-width:5;fill:none}
        .p-chain-gap{stroke:var(--ink-sheet);stroke-width:1.8;fill:none}
        .p-chain-words,.picture text.p-chain-words{font-size:10px;font-weight:600}
        .p-out{fill:var(--ink-words)}
        .p-past{stroke:var(--ink-words);stroke-width:2;fill:none;stroke-linejoin:round}
        .p-ahead{stroke:var(--ink-hands);stroke-width:2;fill:none;stroke-dasharray:6 3;stroke-linejoin:round}
        .p-promise{stroke:var(--ink-soft);stroke-width:1.5}
        .p-over{fill:var(--ink-over);fill-opacity:.28;stroke:var(--ink-over);stroke-width:1}
        .p-over-words,.picture text.p-over-words{font-size:11px;font-weight:600;fill:var(--ink-over)}
        .p-done{fill:var(--ink-hands)}
        .p-cut{stroke:var(--ink-words);stroke-width:2.5}
        .p-open{stroke:var(--ink-soft);stroke-width:1.2;stroke-dasharray:5 4}
        .p-over-words,.p-small,.p-chain-words{paint-order:stroke;stroke:var(--ink-sheet);stroke-width:3px;stroke-linejoin:round}
        .p-label,.picture text.p-label{font-size:12px}
        """;

    /// <summary>
    /// The rules with the inks of a theme written out, for a file that stands alone: many programs that read SVG know no
    /// custom properties, and draw the halo of words over them.
    /// </summary>
    public static string Of(PictureTheme theme)
    {
        var ink = Ink.Of(theme);
        var plain = string.Join('\n', Rules.Split('\n').Where(rule => !rule.Contains("paint-order", StringComparison.Ordinal)));
        return Names(ink).Aggregate(plain, (rules, pair) => rules.Replace($"var(--ink-{pair.Name})", pair.Value, StringComparison.Ordinal));
    }

    private static IEnumerable<(string Name, string Value)> Names(Ink ink) =>
    [
        ("paper", ink.Paper), ("sheet", ink.Sheet), ("words", ink.Words), ("soft", ink.Soft), ("rule", ink.Rule),
        ("closed", ink.Closed), ("hands", ink.Hands), ("on-hands", ink.OnHands), ("run", ink.Run), ("over", ink.Over),
    ];
}
