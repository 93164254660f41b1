using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using EpisodePlanner.Planning.Files;
using Microsoft.AspNetCore.Http.Metadata;

namespace EpisodePlanner.Web.Serving.Requests;

/// <summary>
/// A body in the form of the workshop file, read strictly by the planner's own reader: everything that is wrong is told
/// at once, each with its path.
/// </summary>
/// <typeparam name="T">The record that the body holds.</typeparam>
internal sealed class Body<T> : IRefusable, IBindableFromHttpContext<Body<T>>, IEndpointParameterMetadataProvider
    where T : class
{
    private Body(T? value, ReadOnlyMemory<byte> bytes, IResult? refusal) => (Value, Bytes, Refusal) = (value, bytes, refusal);

    /// <summary>What the body holds; present wherever a handler is called.</summary>
    [NotNull]
    public T? Value => field ?? throw new InvalidOperationException("The body was refused.");

    /// <summary>The body as it came.</summary>
    public ReadOnlyMemory<byte> Bytes { get; }

    /// <inheritdoc/>
    public IResult? Refusal { get; }

    /// <inheritdoc/>
    public static async ValueTask<Body<T>?> BindAsync(HttpContext context, ParameterInfo parameter)
    {
        var (bytes, refusal) = await RequestBody.Read(context.Request, context.RequestAborted);
        if (refusal is not null)
        {
            return new Body<T>(null, bytes, refusal);
        }

        var read = WorkshopFile.Read<T>(bytes);
        return new Body<T>(read.Thing, bytes, read.IsRead ? null : Problems.Invalid(read.Reasons));
    }

    /// <inheritdoc/>
    public static void PopulateMetadata(ParameterInfo parameter, EndpointBuilder builder)
    {
        builder.Metadata.Add(new BodyOf(typeof(T)));
        builder.Metadata.Add(new Refuses(ProblemTypes.Invalid, ProblemTypes.TooLarge, ProblemTypes.UnsupportedMedia));
    }
}
