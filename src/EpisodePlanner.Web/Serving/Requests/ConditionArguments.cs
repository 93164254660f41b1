using System.Reflection;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.ConditionalRequests;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.Net.Http.Headers;

namespace EpisodePlanner.Web.Serving.Requests;

/// <summary>The preconditions of a request that reads.</summary>
internal sealed class ReadConditions : IRefusable, IBindableFromHttpContext<ReadConditions>, IEndpointParameterMetadataProvider
{
    private readonly Conditions conditions;

    private ReadConditions(Conditions conditions, IResult? refusal) => (this.conditions, Refusal) = (conditions, refusal);

    /// <inheritdoc/>
    public IResult? Refusal { get; }

    /// <inheritdoc cref="Conditions.IfMatch"/>
    public EntityTags? IfMatch => conditions.IfMatch;

    /// <summary>Evaluates them for what is there.</summary>
    public Verdict Judge(EntityTagHeaderValue current) => conditions.Judge(current, isRead: true);

    /// <inheritdoc/>
    public static ValueTask<ReadConditions?> BindAsync(HttpContext context, ParameterInfo parameter)
    {
        var isRead = Conditions.TryRead(context.Request.Headers, out var conditions, out var broken);
        return ValueTask.FromResult<ReadConditions?>(new(conditions, isRead ? null : Refusals.BadTag(broken)));
    }

    /// <inheritdoc/>
    public static void PopulateMetadata(ParameterInfo parameter, EndpointBuilder builder)
    {
        builder.Metadata.Add(new TakesHeaders(HeaderNames.IfNoneMatch, HeaderNames.IfMatch));
        builder.Metadata.Add(new Refuses(ProblemTypes.Invalid, ProblemTypes.Stale));
    }
}

/// <summary>The preconditions of a request that changes, where it may have none.</summary>
internal sealed class OptionalConditions
    : IRefusable, IBindableFromHttpContext<OptionalConditions>, IEndpointParameterMetadataProvider
{
    private OptionalConditions(Conditions value, IResult? refusal) => (Value, Refusal) = (value, refusal);

    /// <summary>The preconditions.</summary>
    public Conditions Value { get; }

    /// <inheritdoc/>
    public IResult? Refusal { get; }

    /// <inheritdoc/>
    public static ValueTask<OptionalConditions?> BindAsync(HttpContext context, ParameterInfo parameter)
    {
        var isRead = Conditions.TryRead(context.Request.Headers, out var conditions, out var broken);
        return ValueTask.FromResult<OptionalConditions?>(new(conditions, isRead ? null : Refusals.BadTag(broken)));
    }

    /// <inheritdoc/>
    public static void PopulateMetadata(ParameterInfo parameter, EndpointBuilder builder)
    {
        builder.Metadata.Add(new TakesHeaders(HeaderNames.IfMatch));
        builder.Metadata.Add(new Refuses(ProblemTypes.Invalid, ProblemTypes.Stale));
    }
}

/// <summary>The preconditions of a request that changes what is there; without any it is refused.</summary>
internal sealed class WriteConditions : IRefusable, IBindableFromHttpContext<WriteConditions>, IEndpointParameterMetadataProvider
{
    private WriteConditions(Conditions value, IResult? refusal) => (Value, Refusal) = (value, refusal);

    /// <summary>The preconditions.</summary>
    public Conditions Value { get; }

    /// <inheritdoc/>
    public IResult? Refusal { get; }

    /// <inheritdoc/>
    public static ValueTask<WriteConditions?> BindAsync(HttpContext context, ParameterInfo parameter)
    {
        var isRead = Conditions.TryRead(context.Request.Headers, out var conditions, out var broken);
        var refusal = !isRead ? Refusals.BadTag(broken) : conditions.Guard ? null : Refusals.Unguarded(context.Request.Method);
        return ValueTask.FromResult<WriteConditions?>(new(conditions, refusal));
    }

    /// <inheritdoc/>
    public static void PopulateMetadata(ParameterInfo parameter, EndpointBuilder builder)
    {
        builder.Metadata.Add(new TakesHeaders(HeaderNames.IfMatch, HeaderNames.IfNoneMatch));
        builder.Metadata.Add(new Refuses(ProblemTypes.Invalid, ProblemTypes.Stale, ProblemTypes.PreconditionRequired));
    }
}
