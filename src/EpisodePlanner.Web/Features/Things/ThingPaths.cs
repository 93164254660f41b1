using System.Text.Json;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.Requests;

namespace EpisodePlanner.Web.Features.Things;

/// <summary>How a kind of thing is called in addresses and descriptions.</summary>
/// <param name="kind">The kind.</param>
internal sealed class ThingPaths(ThingKind kind)
{
    /// <summary>Its part of addresses: "/slot-rules".</summary>
    public string Segment { get; } = "/" + NameOf(kind);

    /// <summary>One of its things in one word: "SlotRule".</summary>
    public string One { get; } = string.Concat(kind.Word.Split(' ').Select(Capital));

    /// <summary>Its things in one word: "SlotRules".</summary>
    public string Many { get; } = Capital(kind.Name);

    /// <summary>Its things in a sentence: "slot rules".</summary>
    public string Words { get; } = NameOf(kind).Replace('-', ' ');

    /// <summary>The name of a kind in addresses: "slot-rules".</summary>
    public static string NameOf(ThingKind kind) => JsonNamingPolicy.KebabCaseLower.ConvertName(kind.Name);

    /// <summary>The kind with this name in addresses, or null.</summary>
    public static ThingKind? Find(string? name) => ThingKinds.All.FirstOrDefault(kind => NameOf(kind) == name);

    /// <summary>The address of a thing.</summary>
    public string Of(Id workshop, Id thing) => $"{Api.Root}/workshops/{workshop}{Segment}/{thing}";

    /// <summary>Says that a thing is not there, or when it was deleted and how it comes back.</summary>
    public async Task<Problem> Missing(Id workshop, ThingId id, WorkshopStore store, CancellationToken stop)
    {
        var deleted = id.Value is not null ? await store.Deleted(workshop, stop) ?? [] : [];
        return deleted.FirstOrDefault(thing => thing.What == kind.Of(id.Value!.Value)) is { } gone
            ? Problems.Gone(
                $"The {kind.Word} '{id.Text}'", gone.At, $"{Api.Root}/workshops/{workshop}/deleted{Segment}/{id.Text}/restore")
            : Refusals.NoThing(kind.Word, id.Text);
    }

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
