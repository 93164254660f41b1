using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using EpisodePlanner.Web.Features.Cadences;
using EpisodePlanner.Web.Features.CouldPublish;
using EpisodePlanner.Web.Features.Plans;
using EpisodePlanner.Web.Features.Proofs;
using EpisodePlanner.Web.Features.Silences;
using EpisodePlanner.Web.Features.Story;
using EpisodePlanner.Web.Features.Supposes;
using EpisodePlanner.Web.Features.Why;

namespace EpisodePlanner.Web.Features;

/// <summary>A document that is computed and never sent back: it is described by its type, not by the shape of a file.</summary>
public interface IComputedDocument;

/// <summary>Writes computed documents as JSON.</summary>
internal static class DocumentJson
{
    private static readonly DocumentJsonContext Readable = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        WriteIndented = true,
        NewLine = "\n",
    });

    private static readonly DocumentJsonContext Short = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });

    /// <summary>On one line, for programs that ask over the network.</summary>
    public static byte[] Write(IComputedDocument document) => JsonSerializer.SerializeToUtf8Bytes(document, document.GetType(), Short);

    /// <summary>Indented, closed by a line feed.</summary>
    public static void Write(IComputedDocument document, TextWriter output)
    {
        output.Write(JsonSerializer.Serialize(document, document.GetType(), Readable));
        output.Write('\n');
    }
}

/// <summary>How these documents are serialised.</summary>
[JsonSerializable(typeof(PlanDocument))]
[JsonSerializable(typeof(WhyDocument))]
[JsonSerializable(typeof(ProofDocument))]
[JsonSerializable(typeof(PlanProofDocument))]
[JsonSerializable(typeof(CadenceDocument))]
[JsonSerializable(typeof(SilencesDocument))]
[JsonSerializable(typeof(RemedyEntry))]
[JsonSerializable(typeof(PublishNowDocument))]
[JsonSerializable(typeof(DifferenceDocument))]
[JsonSerializable(typeof(CutsDocument))]
[JsonSerializable(typeof(SeriesCutsDocument))]
internal sealed partial class DocumentJsonContext : JsonSerializerContext;
