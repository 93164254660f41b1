using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using Microsoft.AspNetCore.Http.Metadata;

namespace EpisodePlanner.Web.Serving.Requests;

/// <summary>A whole workshop file as a body, with every rule checked.</summary>
internal sealed class FileBody : IRefusable, IBindableFromHttpContext<FileBody>, IEndpointParameterMetadataProvider
{
    private FileBody(Workshop? workshop, ReadOnlyMemory<byte> bytes, IResult? refusal) =>
        (Workshop, Bytes, Refusal) = (workshop, bytes, refusal);

    /// <summary>The workshop; present wherever a handler is called.</summary>
    [NotNull]
    public Workshop? Workshop => field ?? throw new InvalidOperationException("The file was refused.");

    /// <summary>The file as it came.</summary>
    public ReadOnlyMemory<byte> Bytes { get; }

    /// <inheritdoc/>
    public IResult? Refusal { get; }

    /// <inheritdoc/>
    public static async ValueTask<FileBody?> BindAsync(HttpContext context, ParameterInfo parameter)
    {
        var (bytes, refusal) = await RequestBody.Read(context.Request, context.RequestAborted);
        if (refusal is not null)
        {
            return new FileBody(null, bytes, refusal);
        }

        var read = WorkshopFile.Read(bytes);
        return new FileBody(read.Thing, bytes, read.IsRead ? null : Problems.Invalid(read.Reasons));
    }

    /// <inheritdoc/>
    public static void PopulateMetadata(ParameterInfo parameter, EndpointBuilder builder)
    {
        builder.Metadata.Add(new BodyOf(typeof(Workshop)));
        builder.Metadata.Add(new Refuses(ProblemTypes.Invalid, ProblemTypes.TooLarge, ProblemTypes.UnsupportedMedia));
    }
}
