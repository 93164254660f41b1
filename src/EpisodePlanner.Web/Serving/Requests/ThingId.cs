using System.Diagnostics.CodeAnalysis;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Serving.Requests;

/// <summary>An id in a path; whatever can't be an id names nothing.</summary>
internal sealed class ThingId : IParsable<ThingId>
{
    private ThingId(string text) => (Text, Value) = (text, Id.IsValid(text) ? new Id(text) : null);

    /// <summary>What the path says.</summary>
    public string Text { get; }

    /// <summary>It as an id, or null.</summary>
    public Id? Value { get; }

    /// <inheritdoc/>
    public static ThingId Parse(string s, IFormatProvider? provider) => new(s);

    /// <inheritdoc/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, [MaybeNullWhen(false)] out ThingId result)
    {
        result = s is null ? null : new ThingId(s);
        return result is not null;
    }
}
