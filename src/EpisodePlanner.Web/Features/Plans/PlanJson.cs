using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace EpisodePlanner.Web.Features.Plans;

/// <summary>Writes plans as JSON.</summary>
public static class PlanJson
{
    private static readonly PlanJsonContext Context = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        WriteIndented = true,
        NewLine = "\n",
    });

    private static readonly PlanJsonContext Short = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });

    /// <summary>The document of a plan on one line, for programs that ask over the network.</summary>
    public static byte[] Write(PlanAdvice advice) =>
        JsonSerializer.SerializeToUtf8Bytes(new PlanDocuments(advice.Plan).Of(advice), Short.PlanDocument);

    /// <summary>Writes the document of a plan, closed by a line feed.</summary>
    public static void Write(PlanAdvice advice, TextWriter output)
    {
        output.Write(JsonSerializer.Serialize(new PlanDocuments(advice.Plan).Of(advice), Context.PlanDocument));
        output.Write('\n');
    }
}

/// <summary>How the document is serialised.</summary>
[JsonSerializable(typeof(PlanDocument))]
internal sealed partial class PlanJsonContext : JsonSerializerContext;
