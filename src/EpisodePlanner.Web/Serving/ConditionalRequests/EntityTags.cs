using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using EpisodePlanner.Planning;
using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace EpisodePlanner.Web.Serving.ConditionalRequests;

/// <summary>The value of an If-Match or If-None-Match header: "*", or entity tags (RFC 9110 §13.1.1, §13.1.2).</summary>
public sealed class EntityTags
{
    private readonly IReadOnlyList<EntityTagHeaderValue> tags;

    private EntityTags(IReadOnlyList<EntityTagHeaderValue> tags) => this.tags = tags;

    /// <summary>Whether the header says "*": whatever is there.</summary>
    public bool IsAny => tags.Count == 1 && tags[0].Equals(EntityTagHeaderValue.Any);

    /// <summary>The versions that strong tags of the list name; tags that no version could have are left out.</summary>
    public ValueList<long> Versions => tags
        .Where(tag => !tag.IsWeak)
        .Select(tag => long.TryParse(tag.Tag.AsSpan().Trim('"'), NumberStyles.None, CultureInfo.InvariantCulture, out var v) ? v : 0)
        .Where(version => version > 0)
        .ToValueList();

    /// <summary>The tag of a version: its number in quotes, a strong one.</summary>
    public static EntityTagHeaderValue Of(long version) => new(string.Create(CultureInfo.InvariantCulture, $"\"{version}\""));

    /// <summary>Reads a header; an empty one is none.</summary>
    /// <param name="header">The header's lines.</param>
    /// <param name="tags">What it says; null where it is absent.</param>
    /// <returns>False where it is neither "*" nor a list of entity tags.</returns>
    public static bool TryRead(StringValues header, out EntityTags? tags)
    {
        tags = null;
        if (StringValues.IsNullOrEmpty(header))
        {
            return true;
        }

        if (!EntityTagHeaderValue.TryParseStrictList([.. header.OfType<string>()], out var list)
            || (list.Count > 1 && list.Contains(EntityTagHeaderValue.Any)))
        {
            return false;
        }

        tags = new EntityTags([.. list]);
        return true;
    }

    /// <summary>Whether the current tag is among these by strong comparison, as If-Match asks (§8.8.3.2).</summary>
    /// <param name="current">The tag of what is there; null where nothing is.</param>
    public bool MatchStrongly([NotNullWhen(true)] EntityTagHeaderValue? current) => Match(current, strongly: true);

    /// <summary>Whether the current tag is among these by weak comparison, as If-None-Match asks (§8.8.3.2).</summary>
    /// <param name="current">The tag of what is there; null where nothing is.</param>
    public bool MatchWeakly([NotNullWhen(true)] EntityTagHeaderValue? current) => Match(current, strongly: false);

    /// <inheritdoc/>
    public override string ToString() => string.Join(", ", tags);

    private bool Match(EntityTagHeaderValue? current, bool strongly) =>
        current is not null && (IsAny || tags.Any(tag => tag.Compare(current, strongly)));
}
