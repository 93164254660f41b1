using System.Buffers.Binary;
using System.Security.Cryptography;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Data;

/// <summary>Makes new ids: UUIDv7 (RFC 9562, 5.7), ordered by the moment they were made. Safe to call at once.</summary>
/// <param name="clock">The clock.</param>
/// <param name="generator">The random bits; safe to call at once.</param>
public sealed class IdSource(TimeProvider clock, RandomNumberGenerator generator)
{
    private const byte VersionSeven = 0x70;
    private const byte Variant = 0x80;

    /// <summary>A new id.</summary>
    public Id Next()
    {
        Span<byte> bytes = stackalloc byte[16];
        generator.GetBytes(bytes);
        Span<byte> milliseconds = stackalloc byte[8];
        BinaryPrimitives.WriteInt64BigEndian(milliseconds, clock.GetUtcNow().ToUnixTimeMilliseconds());
        milliseconds[2..].CopyTo(bytes);
        bytes[6] = (byte)((bytes[6] & 0x0F) | VersionSeven);
        bytes[8] = (byte)((bytes[8] & 0x3F) | Variant);
        return new Id(new Guid(bytes, bigEndian: true).ToString());
    }
}
