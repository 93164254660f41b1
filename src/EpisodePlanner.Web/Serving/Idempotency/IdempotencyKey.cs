using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using EpisodePlanner.Data;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.Metadata;

namespace EpisodePlanner.Web.Serving.Idempotency;

/// <summary>
/// The key under which a client may send a request again without it being carried out twice: the header
/// Idempotency-Key, 1 to 200 visible ASCII characters. A store keeps it for a day.
/// </summary>
internal sealed class IdempotencyKey : IRefusable, IBindableFromHttpContext<IdempotencyKey>, IEndpointParameterMetadataProvider
{
    /// <summary>The header.</summary>
    public const string Header = "Idempotency-Key";

    private const int Longest = 200;
    private readonly string? key;
    private readonly string target;

    private IdempotencyKey(string? key, string target, IResult? refusal) =>
        (this.key, this.target, Refusal) = (key, target, refusal);

    /// <inheritdoc/>
    public IResult? Refusal { get; }

    /// <summary>Whether the client gave a key.</summary>
    public bool IsGiven => key is not null;

    /// <summary>The key with a digest of what is asked for: method, address and body; null where the client gave no key.</summary>
    public RequestKey? For(ReadOnlyMemory<byte> body)
    {
        if (key is null)
        {
            return null;
        }

        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(Encoding.UTF8.GetBytes(target));
        hash.AppendData(body.Span);
        return new RequestKey(key, Convert.ToHexStringLower(hash.GetHashAndReset()));
    }

    /// <inheritdoc/>
    public static ValueTask<IdempotencyKey?> BindAsync(HttpContext context, ParameterInfo parameter)
    {
        var request = context.Request;
        var values = request.Headers[Header];
        var isSound = values.Count == 0
            || (values.Count == 1 && values[0] is { Length: > 0 and <= Longest } text && text.All(c => c is > ' ' and < '\u007f'));
        return ValueTask.FromResult<IdempotencyKey?>(new(
            isSound && values.Count == 1 ? values[0] : null,
            $"{request.Method} {request.PathBase}{request.Path}{request.QueryString}\n",
            isSound ? null : Refusals.BadKey(Header, Longest)));
    }

    /// <inheritdoc/>
    public static void PopulateMetadata(ParameterInfo parameter, EndpointBuilder builder)
    {
        builder.Metadata.Add(new TakesHeaders(Header));
        builder.Metadata.Add(new Refuses(ProblemTypes.Invalid, ProblemTypes.KeyReused));
    }
}
