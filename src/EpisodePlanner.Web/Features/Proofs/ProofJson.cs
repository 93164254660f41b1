using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Plans;
using EpisodePlanner.Web.Telling;

namespace EpisodePlanner.Web.Features.Proofs;

/// <summary>Writes proofs as JSON.</summary>
internal static class ProofJson
{
    private static readonly ProofJsonContext Context = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        WriteIndented = true,
        NewLine = "\n",
    });

    private static readonly ProofJsonContext Short = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });

    /// <summary>The document on one line.</summary>
    public static byte[] Write(Plan plan, EpisodeProof proof) => JsonSerializer.SerializeToUtf8Bytes(Of(plan, proof), Short.ProofDocument);

    /// <summary>Writes the document, closed by a line feed.</summary>
    public static void Write(Plan plan, EpisodeProof proof, TextWriter output)
    {
        output.Write(JsonSerializer.Serialize(Of(plan, proof), Context.ProofDocument));
        output.Write('\n');
    }

    private static ProofDocument Of(Plan plan, EpisodeProof proof)
    {
        var (values, words) = (new DocumentValues(plan.Zone), new ProofWords(plan));
        return new ProofDocument
        {
            Episode = $"{proof.Episode.Id}",
            Title = proof.Episode.Title,
            PlannedAt = values.Moment(plan.Request.PlannedAt),
            Earliest = values.Moment(proof.Earliest),
            EarliestDay = DocumentValues.Day(proof.Date),
            PlannedDay = DocumentValues.Day(proof.Episode.Date),
            Reached = proof.IsReached,
            OpenDays = proof.OpenDays,
            Says = words.Bound(proof),
            Why = Why(proof.Why, words.Why(proof.Why), values),
        };
    }

    private static ProofReasonEntry Why(ProofReason why, string says, DocumentValues values) => why switch
    {
        ProofReason.Chain chain => new("chain", says, [.. chain.Stages.Select(stage => DocumentValues.Key(stage.Key))], [], null, null, null, null),
        ProofReason.Load load => new(
            "load",
            says,
            [],
            [.. load.Stations.Select(station => $"{station}")],
            values.Moment(load.From),
            values.Moment(load.Until),
            load.NeededMinutes,
            load.OpenMinutes),
        ProofReason.Together together => new("together", says, [], [.. together.Stations.Select(station => $"{station}")], null, null, null, null),
        _ => new("slots", says, [], [], null, null, null, null),
    };
}

/// <summary>How the document is serialised.</summary>
[JsonSerializable(typeof(ProofDocument))]
internal sealed partial class ProofJsonContext : JsonSerializerContext;
